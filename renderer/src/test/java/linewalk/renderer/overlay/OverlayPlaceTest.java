package linewalk.renderer.overlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The original lies where it is displayed, and the marks on it where they were read. The place of a red square on the
 * original is taken from the original itself, as a viewer shows it.
 */
class OverlayPlaceTest {

    private static final float PIXELS_PER_PT = 4;
    private static final double TOLERANCE_PT = 1;

    @TempDir
    Path folder;

    @Test
    void onAnUprightPage() throws IOException {
        check(0, new PDRectangle(0, 0, 600, 400), OverlayBench.UPRIGHT);
    }

    @Test
    void onAPageOfWhichAPartIsShown() throws IOException {
        check(0, new PDRectangle(50, 30, 600, 400), new Affine(1, 0, 50, 0, -1, 430));
    }

    @Test
    void onATurnedPage() throws IOException {
        check(90, new PDRectangle(0, 0, 400, 600), new Affine(0, 1, 0, 1, 0, 0));
    }

    @Test
    void onATurnedPageOfWhichAPartIsShown() throws IOException {
        check(90, new PDRectangle(50, 30, 400, 600), new Affine(0, 1, 50, 1, 0, 30));
    }

    @Test
    void onAPageTurnedTheOtherWay() throws IOException {
        check(270, new PDRectangle(50, 30, 400, 600), new Affine(0, -1, 450, -1, 0, 630));
    }

    @Test
    void onAPageUpsideDown() throws IOException {
        check(180, new PDRectangle(50, 30, 600, 400), new Affine(-1, 0, 650, 0, 1, 30));
    }

    @Test
    void onAPageWithAUnitOfItsOwn() throws IOException {
        byte[] original = original(new PDRectangle(0, 0, 300, 200), 0, 2);
        // viewers that know the unit show 600 by 400 pt; the renderer used here does not, so its pixels count twice
        Point square = center(OverlayBench.picture(original, 1, 2 * PIXELS_PER_PT));
        checkMark(square, new Affine(0.5, 0, 0, 0, -0.5, 200));
    }

    private void check(int rotation, PDRectangle shown, Affine toPage) throws IOException {
        byte[] original = original(shown, rotation, 1);
        checkMark(center(OverlayBench.picture(original, 1, PIXELS_PER_PT)), toPage);
    }

    private void checkMark(Point square, Affine toPage) {
        OverlayBench bench = new OverlayBench().sheet(toPage);
        bench.source = folder.resolve("original.pdf");
        Point under = center(OverlayBench.picture(bench.print(), 2, PIXELS_PER_PT));
        assertThat(under.xPt()).isCloseTo(square.xPt(), within(TOLERANCE_PT));
        assertThat(under.yPt()).isCloseTo(square.yPt(), within(TOLERANCE_PT));

        bench.line(1, square, square.plus(120, 0));
        bench.line(1, square, square.plus(0, 90));
        BufferedImage image = OverlayBench.picture(bench.print(), 2, PIXELS_PER_PT);
        List<Point> crosses = OverlayBench.pixels(image, c -> OverlayBench.near(c, Tint.LINES.get(1)));
        Point corner = inPoints(Box.around(crosses));
        // the later line's crosses stand at both its ends
        assertThat(corner.xPt()).isCloseTo(square.xPt(), within(TOLERANCE_PT));
        assertThat(corner.yPt()).isCloseTo(square.yPt() + 45, within(TOLERANCE_PT));
    }

    /** A red square of 10 pt, off all centre lines, on a page larger than what is shown of it. */
    private byte[] original(PDRectangle shown, int rotation, float unit) throws IOException {
        try (PDDocument doc = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(shown.getUpperRightX() + 20, shown.getUpperRightY() + 20));
            page.setCropBox(shown);
            page.setRotation(rotation);
            page.setUserUnit(unit);
            doc.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(doc, page)) {
                out.setNonStrokingColor(Color.RED);
                out.addRect(shown.getLowerLeftX() + 130 / unit, shown.getLowerLeftY() + 170 / unit, 10, 10);
                out.fill();
            }
            doc.save(folder.resolve("original.pdf").toFile());
        }
        return Files.readAllBytes(folder.resolve("original.pdf"));
    }

    /** Of all that is red, whether veiled or not, in points. */
    private static Point center(BufferedImage image) {
        return inPoints(Box.around(OverlayBench.pixels(
                image, c -> c.getRed() > 240 && c.getGreen() < 150 && c.getGreen() == c.getBlue())));
    }

    private static Point inPoints(Box boxPixels) {
        Point p = boxPixels.center();
        return new Point(p.xPt() / PIXELS_PER_PT, p.yPt() / PIXELS_PER_PT);
    }
}
