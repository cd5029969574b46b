package linewalk.tests.browser;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reference of the linked copy is pressed in a real browser's PDF viewer, which then shows its mate, and back. */
class FollowedLinkTest {

    /** The mate stands in the middle half of the window: a viewer fits the linked view to its own shape. */
    private static final double MIDDLE = 0.25;

    @TempDir
    Path folder;

    @Test
    void pressingAReferenceShowsItsMate() throws Exception {
        Path drawn = folder.resolve("drawn");
        DemoSet.write(drawn, DraftingStyle.ALL.get(0));
        Path set = folder.resolve("set");
        fine("import", drawn.resolve("link-span.pdf"), "--into", set);
        Path linked = folder.resolve("linked.pdf");
        fine("link", set, "--out", linked);
        JsonNode export = fine("export", set).json();
        Map<String, JsonNode> references = StreamSupport.stream(export.get("references").spliterator(), false)
                .collect(Collectors.toMap(r -> r.get("id").asText(), r -> r));
        JsonNode here = references.values().stream()
                .filter(r -> r.get("page").asInt() == 1 && r.get("mates").size() == 1)
                .min(Comparator.comparingDouble(r -> aside(references.get(r.get("mates").get(0).asText()), export)))
                .orElseThrow();
        JsonNode mate = references.get(here.get("mates").get(0).asText());

        Optional<PdfViewer> viewer = PdfViewer.open(linked, folder.resolve("profile"));
        assumeTrue(viewer.isPresent(), "skipped: there is no Chromium (on Debian: apt-get install chromium)");
        try (PdfViewer v = viewer.get()) {
            press(v, here, export);
            isShown(v, mate, export, MIDDLE);
            press(v, mate, export);
            // this one stands at the sheet's edge, beyond which the viewer does not scroll
            isShown(v, here, export, 0.5);
            System.out.println("pressed '" + here.get("text").asText() + "' on sheet " + here.get("sheet").asText()
                    + " in Chromium, saw '" + mate.get("text").asText() + "' on sheet "
                    + mate.get("sheet").asText() + " in the middle half of the window, and went back");
        }
    }

    private static void press(PdfViewer v, JsonNode reference, JsonNode export) throws Exception {
        double[] at = place(v, reference, export);
        v.click(at[0], at[1]);
    }

    /** How far from the middle of its sheet, as a share of it: a viewer can't bring a sheet's edge to its middle. */
    private static double aside(JsonNode reference, JsonNode export) {
        JsonNode sheet = sheet(reference, export);
        return Math.max(
                Math.abs(reference.get("xPt").asDouble() / sheet.get("widthPt").asDouble() - 0.5),
                Math.abs(reference.get("yPt").asDouble() / sheet.get("heightPt").asDouble() - 0.5));
    }

    private static JsonNode sheet(JsonNode reference, JsonNode export) {
        for (JsonNode s : export.get("sheets")) {
            if (s.get("page").equals(reference.get("page"))) {
                return s;
            }
        }
        throw new AssertionError("no sheet of " + reference);
    }

    /** @param off at most, as a share of the window, from its middle */
    private static void isShown(PdfViewer v, JsonNode reference, JsonNode export, double off) throws Exception {
        assertThat(v.page()).isEqualTo(reference.get("page").asInt() - 1);
        double[] at = place(v, reference, export);
        double[] e = v.extents(reference.get("page").asInt() - 1);
        assertThat(Math.abs(at[0] - e[4] - e[6] / 2) / e[6]).as("aside of the middle").isLessThan(off);
        assertThat(Math.abs(at[1] - e[5] - e[7] / 2) / e[7]).as("above or below the middle").isLessThan(off);
    }

    /** In pixels of the window. */
    private static double[] place(PdfViewer v, JsonNode reference, JsonNode export) throws Exception {
        JsonNode sheet = sheet(reference, export);
        double[] e = v.extents(reference.get("page").asInt() - 1);
        return new double[] {
            e[0] + e[2] * reference.get("xPt").asDouble() / sheet.get("widthPt").asDouble(),
            e[1] + e[3] * reference.get("yPt").asDouble() / sheet.get("heightPt").asDouble()
        };
    }
}
