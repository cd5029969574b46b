package linewalk.renderer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A cutting painted is the cutting that a PDF shows, however its page is turned or cropped. */
class CuttingTest {

    private static final float DOTS_PER_PT = 2;
    private static final int WIDTH_PT = 400;
    private static final int HEIGHT_PT = 300;

    /** Twice as large, upside down as user space is, and a little to the right. */
    private static final AffineTransform TO_PRINT = new AffineTransform(1.2, 0, 0, -1.2, 15, 280);

    private static final Rectangle2D ALL = new Rectangle2D.Double(0, 0, WIDTH_PT, HEIGHT_PT);

    @ParameterizedTest
    @CsvSource({"0, 0", "90, 0", "180, 0", "270, 0", "0, 45", "90, 45", "180, 45", "270, 45"})
    void isPaintedWhereThePdfPlacesIt(int rotation, float hiddenPt) throws IOException {
        OriginalSheet sheet = new OriginalSheet(rotation, hiddenPt);
        BufferedImage placed = placed(sheet);
        Likeness likeness = Likeness.of(painted(sheet), placed);
        assertThat(likeness.strokes()).isLessThan(0.001);
        assertThat(likeness.patch()).isLessThan(4);
        assertThat(new Color(placed.getRGB(180, 400))).as("the red field").isEqualTo(Color.RED);
    }

    private static BufferedImage painted(OriginalSheet sheet) throws IOException {
        BufferedImage image = new BufferedImage(
                (int) (WIDTH_PT * DOTS_PER_PT), (int) (HEIGHT_PT * DOTS_PER_PT), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setBackground(Color.WHITE);
        g.clearRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(DOTS_PER_PT, DOTS_PER_PT);
        new Cutting(sheet.original(), TO_PRINT, ALL).paint(g);
        return image;
    }

    private static BufferedImage placed(OriginalSheet sheet) throws IOException {
        try (PdfBook book = new PdfBook(WIDTH_PT, HEIGHT_PT, "A cutting", LocalDate.of(2026, 2, 3))) {
            Page page = book.newPage();
            page.place(sheet.original(), TO_PRINT, ALL);
            page.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(0, out);
            try (PDDocument doc = Loader.loadPDF(out.toByteArray())) {
                return new PDFRenderer(doc).renderImage(0, DOTS_PER_PT);
            }
        }
    }
}
