package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The original's own areas with the path laid over them. */
class CuttingsTest {

    @TempDir
    Path folder;

    private Bench bench(int rotation) {
        Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench" + rotation + ".pdf"), rotation);
        bench.look = Look.CUTTINGS;
        return bench;
    }

    @Test
    void layTheOverlayOnTheDrawnLine() throws IOException {
        assertThat(overlaid(picture(Prints.print(bench(0).job(), "cuttings")))).isGreaterThan(2000);
    }

    @Test
    void doNotDrawOverALineThatWasNeverTraced() throws IOException {
        Bench bench = new Bench();
        Component a = bench.part(1, "V1", Kind.CHECK_VALVE, 100, 100, "A@100,75", "B@100,125");
        Component b = bench.part(1, "V2", Kind.CHECK_VALVE, 300, 300, "A@300,275");
        bench.through(a, null, "B", null);
        bench.along(1, "L-9", Bench.at(100, 125), Bench.at(300, 275), List.of());
        bench.through(b, "A", null, null);
        bench.drawnTo(folder.resolve("untraced.pdf"), 0).look = Look.CUTTINGS;
        byte[] pdf = Prints.print(bench.job(), "cuttings-untraced");
        assertThat(overlaid(picture(pdf))).isZero();
        assertThat(Prints.text(pdf)).contains("Line L-9 on sheet 1, A1 was never traced on the drawing");
    }

    @ParameterizedTest
    @CsvSource({"90, 0", "0, 40", "90, 40"})
    void showATurnedOrCroppedPageAsItIsDisplayed(int rotation, double hiddenPt) throws IOException {
        BufferedImage upright = picture(Prints.print(bench(0).job(), "cuttings"));
        Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("turned.pdf"), rotation, hiddenPt);
        bench.look = Look.CUTTINGS;
        BufferedImage turned = picture(Prints.print(bench.job(), "cuttings-turned"));
        int differing = 0;
        for (int y = 0; y < upright.getHeight(); y++) {
            for (int x = 0; x < upright.getWidth(); x++) {
                differing += Math.abs(grey(upright, x, y) - grey(turned, x, y)) > 100 ? 1 : 0;
            }
        }
        assertThat(differing).isLessThan(upright.getWidth() * upright.getHeight() / 2000);
    }

    @Test
    void nameBothAddressesOfEachCrossing() {
        assertThat(Prints.text(Prints.print(bench(0).job(), "cuttings")))
                .doesNotContain("DOES NOT ARRIVE")
                .contains("Leaves: sheet 1, A4 \u2192 sheet 2, C1")
                .contains("Enters: sheet 3, C4 \u2192 sheet 2, A4");
    }

    @Test
    void sayWhereAnOriginalIsMissing() {
        Bench bench = new Bench().roundTrip();
        bench.look = Look.CUTTINGS;
        assertThat(Prints.text(Prints.print(bench.job(), "cuttings-missing")))
                .contains("ORIGINAL MISSING OR NOT READABLE: bench.pdf page 2")
                .contains("is missing or cannot be read: its cutting is empty");
    }

    /** The first page without the column of text. */
    private static BufferedImage picture(byte[] pdf) throws IOException {
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(doc).renderImage(0);
            return page.getSubimage(0, 0, 790, 740);
        }
    }

    private static int grey(BufferedImage image, int x, int y) {
        Color c = new Color(image.getRGB(x, y));
        return (c.getRed() + c.getGreen() + c.getBlue()) / 3;
    }

    /** Pixels in the overlay's orange. */
    private static int overlaid(BufferedImage image) {
        int n = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                Color c = new Color(image.getRGB(x, y));
                n += c.getRed() - c.getBlue() > 60 && c.getGreen() > c.getBlue() + 30 ? 1 : 0;
            }
        }
        return n;
    }
}
