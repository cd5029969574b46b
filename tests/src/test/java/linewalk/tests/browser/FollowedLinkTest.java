package linewalk.tests.browser;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
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

    /** A viewer fits the linked view to the shape of its own window. */
    private static final double MIDDLE = 0.15;

    /** Around each page the viewer draws a frame. */
    private static final double EDGE_PX = 25;

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
        Map<String, JsonNode> references = StreamSupport.stream(
                        export.get("references").spliterator(), false)
                .collect(Collectors.toMap(r -> r.get("id").asText(), r -> r));
        JsonNode here = references.values().stream()
                .filter(r -> r.get("page").asInt() == 1 && r.get("mates").size() == 1)
                .filter(r -> references
                                .get(r.get("mates").get(0).asText())
                                .get("page")
                                .asInt()
                        > 1)
                .findFirst()
                .orElseThrow();
        JsonNode mate = references.get(here.get("mates").get(0).asText());

        Optional<PdfViewer> viewer = PdfViewer.open(linked, folder.resolve("profile"));
        assumeTrue(viewer.isPresent(), "skipped: there is no Chromium (on Debian: apt-get install chromium)");
        try (PdfViewer v = viewer.get()) {
            press(v, here, export);
            isShown(v, mate, export);
            press(v, mate, export);
            isShown(v, here, export);
            System.out.println("pressed '" + here.get("text").asText() + "' on sheet "
                    + here.get("sheet").asText()
                    + " in Chromium, saw '" + mate.get("text").asText() + "' on sheet "
                    + mate.get("sheet").asText() + " in the middle, and went back");
        }
    }

    private static void press(PdfViewer v, JsonNode reference, JsonNode export) throws Exception {
        double[] at = place(v, reference, export);
        v.click(at[0], at[1]);
    }

    private static JsonNode sheet(JsonNode reference, JsonNode export) {
        for (JsonNode s : export.get("sheets")) {
            if (s.get("page").equals(reference.get("page"))) {
                return s;
            }
        }
        throw new AssertionError("no sheet of " + reference);
    }

    private static void isShown(PdfViewer v, JsonNode reference, JsonNode export) throws Exception {
        assertThat(v.page()).isEqualTo(reference.get("page").asInt() - 1);
        double[] at = place(v, reference, export);
        double[] e = v.extents(reference.get("page").asInt() - 1);
        isCentred(at[0], e[0], e[2], e[4], e[6]);
        isCentred(at[1], e[1], e[3], e[5], e[7]);
    }

    /** In the middle, or as near to it as the sheet's edge lets the window be moved. */
    private static void isCentred(double at, double page, double pageSize, double window, double windowSize) {
        double off = (at - window) / windowSize - 0.5;
        boolean edge = off < 0 ? page >= window - EDGE_PX : page + pageSize <= window + windowSize + EDGE_PX;
        assertThat(Math.abs(off)).as("share of the window from its middle").isLessThan(edge ? 0.5 : MIDDLE);
    }

    /** In pixels of the window. */
    private static double[] place(PdfViewer v, JsonNode reference, JsonNode export) throws Exception {
        JsonNode sheet = sheet(reference, export);
        double[] e = v.extents(reference.get("page").asInt() - 1);
        return new double[] {
            e[0] + e[2] * reference.get("xPt").asDouble() / sheet.get("widthPt").asDouble(),
            e[1]
                    + e[3]
                            * reference.get("yPt").asDouble()
                            / sheet.get("heightPt").asDouble()
        };
    }
}
