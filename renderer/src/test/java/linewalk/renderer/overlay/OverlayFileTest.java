package linewalk.renderer.overlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import linewalk.drawing.Rule;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;

/** The file itself: pages, outline, title, soundness. */
class OverlayFileTest {

    private final OverlayBench bench = new OverlayBench();

    OverlayFileTest() {
        bench.sheet(OverlayBench.UPRIGHT).sheet(OverlayBench.UPRIGHT).sheet(OverlayBench.UPRIGHT);
        bench.part("0P1", Kind.PUMP, 200, 200, 0.95);
        bench.finding(Rule.LOOSE_END, 2, new Point(100, 100), "A line ends in nothing.", null);
    }

    @Test
    void hasALegendTheSheetsAndAListForASheetWithFindings() throws IOException {
        try (PDDocument doc = Loader.loadPDF(bench.print())) {
            assertThat(doc.getNumberOfPages()).isEqualTo(1 + 3 + 1);
        }
    }

    @Test
    void showsSheetsAtTheirOwnSize() throws IOException {
        try (PDDocument doc = Loader.loadPDF(bench.print())) {
            assertThat(doc.getPage(1).getMediaBox().getWidth()).isCloseTo((float) OverlayBench.WIDTH_PT, within(0.01f));
            assertThat(doc.getPage(1).getMediaBox().getHeight())
                    .isCloseTo((float) OverlayBench.HEIGHT_PT, within(0.01f));
        }
    }

    @Test
    void hasAnOutlineEntryForEachSheet() throws IOException {
        try (PDDocument doc = Loader.loadPDF(bench.print())) {
            List<String> entries = new ArrayList<>();
            for (PDOutlineItem i : doc.getDocumentCatalog().getDocumentOutline().children()) {
                entries.add(i.getTitle() + " on " + doc.getPages().indexOf(i.findDestinationPage(doc)));
            }
            assertThat(entries)
                    .containsExactly("Sheet S1: TITLE 1 on 1", "Sheet S2: TITLE 2 on 2", "Sheet S3: TITLE 3 on 4");
        }
    }

    @Test
    void hasATitleAndTheSameBytesForTheSameJob() throws IOException {
        byte[] pdf = bench.print();
        assertThat(bench.print()).isEqualTo(pdf);
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            assertThat(doc.getDocumentInformation().getTitle()).isEqualTo("Bench press: what was read of the sheets");
        }
    }

    @Test
    void drawsNoPictures() throws IOException {
        try (PDDocument doc = Loader.loadPDF(bench.print())) {
            for (var page : doc.getPages()) {
                for (var name : page.getResources().getXObjectNames()) {
                    assertThat(page.getResources().isImageXObject(name)).isFalse();
                }
            }
        }
    }

    @Test
    void passesAnIndependentCheck() throws Exception {
        bench.print();
        Process check;
        try {
            check = new ProcessBuilder("qpdf", "--check", "target/prints/overlay.pdf")
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException e) {
            assumeTrue(false, "skipped: qpdf is not installed");
            return;
        }
        String said = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(check.waitFor()).as(said).isZero();
    }
}
