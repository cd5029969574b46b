package linewalk.tests.truth;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import linewalk.drawing.Affine;
import linewalk.drawing.Point;
import linewalk.samples.DemoSet;
import linewalk.samples.scan.ScanSet;
import linewalk.samples.style.DraftingStyle;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two sheets of the demo as scans: one askew, one upside down; and a scanned set of six sheets. What was reached once must
 * stay. Other whole sets take minutes and are scored by hand.
 */
class ScanTruthTest {

    private static final int SHEETS = 2;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"hops, 200, true", "iso, 200, false"})
    void demo(String style, int dpi, boolean bitonal) throws IOException {
        Path drawn = folder.resolve("drawn");
        DemoSet.write(drawn, DraftingStyle.named(style));
        Path few = folder.resolve("few.pdf");
        firstSheets(drawn.resolve("link-span.pdf"), few);
        Path scans = folder.resolve("scans");
        ScanSet.write(few, drawn.resolve("truth.json"), scans, dpi, bitonal);
        String name = "demo-" + style + "-" + dpi + (bitonal ? "-bitonal" : "-grey");
        holds(name, scans.resolve("scan.pdf"), scans.resolve("truth.json"));
    }

    @Test
    void keptBesideTheRepository() {
        Optional<Path> scan = Sets.shared("set-d/set-d-scan.pdf");
        assumeTrue(scan.isPresent(), "skipped: shared/drawings/set-d is not beside the repository");
        holds(
                "set-d-scan",
                scan.orElseThrow(),
                Sets.shared("set-d/truth-scan.json").orElseThrow());
    }

    private void holds(String name, Path scan, Path truth) {
        Path made = folder.resolve("set");
        fine("import", scan, "--into", made);
        JsonNode export = fine("export", made).json();
        Map<String, Double> figures = Score.of(new Truth(moved(Sets.json(truth))), export);
        Baselines baselines = Baselines.checkedIn();
        baselines.gains(name, figures).forEach(g -> System.out.println("the baseline may rise: " + g));
        assertThat(baselines.faults(name, figures)).isEmpty();
    }

    private static void firstSheets(Path pdf, Path to) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            while (document.getNumberOfPages() > SHEETS) {
                document.removePage(SHEETS);
            }
            Files.createDirectories(to.getParent());
            document.save(to.toFile());
        }
    }

    /** The truth of the scanned sheets alone, with points as they lie on the scans; states and paths need all sheets. */
    private static JsonNode moved(JsonNode truth) {
        ObjectNode out = truth.deepCopy();
        out.remove("states");
        out.remove("defects");
        ArrayNode checked = out.putArray("checked_pages");
        for (JsonNode sheet : truth.get("sheets")) {
            JsonNode m = sheet.path("display_transform");
            if (m.isArray()) {
                int page = sheet.get("page").asInt();
                checked.add(page);
                Affine to = new Affine(
                        m.get(0).asDouble(),
                        m.get(1).asDouble(),
                        m.get(2).asDouble(),
                        m.get(3).asDouble(),
                        m.get(4).asDouble(),
                        m.get(5).asDouble());
                for (String list : new String[] {"references", "components"}) {
                    out.get(list).forEach(t -> move((ObjectNode) t, page, to));
                }
            }
        }
        return out;
    }

    private static void move(ObjectNode thing, int page, Affine to) {
        if (thing.get("page").asInt() != page) {
            return;
        }
        Point p = to.apply(new Point(thing.get("x").asDouble(), thing.get("y").asDouble()));
        thing.put("x", p.xPt()).put("y", p.yPt());
        thing.path("ports").properties().forEach(e -> {
            Point port = to.apply(new Point(
                    e.getValue().get(0).asDouble(), e.getValue().get(1).asDouble()));
            e.setValue(new ObjectMapper().createArrayNode().add(port.xPt()).add(port.yPt()));
        });
    }
}
