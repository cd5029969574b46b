package linewalk.tests.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import linewalk.drawing.store.SetFolder;
import linewalk.importer.SourceImporter;
import linewalk.samples.machine.Part;
import linewalk.samples.random.RandomSet;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.symbol.Spot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kinds read from symbols alone and the ways that oil may not go back, in circuits by chance. */
class RandomKindsTest {

    private static final int PAGES = 12;
    private static final double LEAST = 0.97;

    /** The one way through each kind of part, by the drawn port names. */
    private static final Map<String, String> ONE_WAY = Map.of(
            "check-valve", "A>B",
            "pilot-check-valve", "A>B",
            "flow-control", "A>B",
            "relief-valve", "P>T",
            "counterbalance-valve", "V>C");

    @TempDir
    Path folder;

    private int parts;
    private int right;
    private int ways;
    private final Map<String, Integer> wrong = new TreeMap<>();
    private final Map<String, Integer> wrongWays = new TreeMap<>();

    @Test
    void symbolsTellKindAndDirection() throws IOException {
        for (DraftingStyle style : DraftingStyle.ALL) {
            read(style);
        }
        System.out.printf("kinds %d of %d, %d ways, wrong %s, wrong ways %s%n", right, parts, ways, wrong, wrongWays);
        assertThat(parts).isGreaterThan(200);
        assertThat(ways).isGreaterThan(50);
        assertThat(wrongWays).isEmpty();
        assertThat((double) right / parts).as("%s", wrong).isGreaterThanOrEqualTo(LEAST);
    }

    private void read(DraftingStyle style) throws IOException {
        RandomSet set = RandomSet.of(style, 77, PAGES);
        Path pdf = folder.resolve(style.name() + ".pdf");
        List<DrawnSheet> sheets;
        try (OutputStream out = Files.newOutputStream(pdf)) {
            sheets = set.write(out);
        }
        SetFolder at = SetFolder.at(folder.resolve(style.name()));
        List<SheetReading> readings =
                new SourceImporter(new SetSettings(null, null, null), at.readings(), (done, of) -> {}).read(pdf, "set");
        for (int i = 0; i < sheets.size(); i++) {
            for (Part part : sheets.get(i).plan().parts()) {
                score(style.name(), part, sheets.get(i), readings.get(i));
            }
        }
    }

    private void score(String style, Part part, DrawnSheet sheet, SheetReading reading) {
        Component c = reading.components().stream()
                .filter(x -> x.tag().equals(part.tag()))
                .findFirst()
                .orElse(null);
        parts++;
        String kind = c == null ? "no part" : c.kind().word();
        if (kind.equals(part.symbol().kind())) {
            right++;
        } else {
            wrong.merge(style + ": " + kind + " for " + part.symbol().kind(), 1, Integer::sum);
        }
        if (c != null
                && c.rest().isPresent()
                && ONE_WAY.containsKey(part.symbol().kind())) {
            for (Passage p : c.rest().get().passages()) {
                if (p.oneWay()) {
                    ways++;
                    String way = name(c, p.from(), part, sheet) + ">" + name(c, p.to(), part, sheet);
                    if (!way.equals(ONE_WAY.get(part.symbol().kind()))) {
                        wrongWays.merge(style + ": " + part.symbol().kind() + " " + way, 1, Integer::sum);
                    }
                }
            }
        }
    }

    private static String name(Component c, String portId, Part part, DrawnSheet sheet) {
        Point at = c.findPort(portId).orElseThrow().place();
        return part.symbol().ports().keySet().stream()
                .min((a, b) -> Double.compare(gapPt(at, part, sheet, a), gapPt(at, part, sheet, b)))
                .orElseThrow();
    }

    private static double gapPt(Point at, Part part, DrawnSheet sheet, String port) {
        Spot spot = sheet.pt(part.port(port));
        return at.distancePt(new Point(spot.x(), spot.y()));
    }
}
