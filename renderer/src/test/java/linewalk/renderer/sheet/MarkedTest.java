package linewalk.renderer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** Marked content changes nothing that is seen, on any output. */
class MarkedTest {

    private static void plain(Canvas c) {
        c.pen(Ink.PATH, Ink.line(2));
        c.line(10, 50, 90, 50);
        c.pen(Ink.BLACK, Ink.line(1));
        c.rect(40, 40, 20, 20);
    }

    private static void marked(Canvas c) {
        List<Point2D> course = List.of(new Point2D.Double(10, 50), new Point2D.Double(90, 50));
        Marked.field(c, new Rectangle2D.Double(0, 0, 100, 100), f -> {
            Marked.line(f, "L-1", course, k -> k.pen(Ink.PATH, Ink.line(2)).polyline(course));
            Rectangle2D box = new Rectangle2D.Double(40, 40, 20, 20);
            Marked.symbol(f, "0V1", box, k -> k.pen(Ink.BLACK, Ink.line(1)).draw(box));
        });
    }

    @Test
    void thePdfLooksTheSame() throws IOException {
        assertThat(pixels(pdf(MarkedTest::marked))).isEqualTo(pixels(pdf(MarkedTest::plain)));
    }

    @Test
    void theSameDrawingGivesTheSameBytes() throws IOException {
        assertThat(pdf(MarkedTest::marked)).isEqualTo(pdf(MarkedTest::marked));
    }

    @Test
    void aPictureIsDrawnAsEver() {
        assertThat(pixels(MarkedTest::marked)).isEqualTo(pixels(MarkedTest::plain));
    }

    private static byte[] pdf(Consumer<Canvas> drawing) throws IOException {
        try (PdfBook book = new PdfBook(100, 100, "test", LocalDate.EPOCH)) {
            Page page = book.newPage();
            drawing.accept(page.canvas());
            page.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(0, out);
            return out.toByteArray();
        }
    }

    private static int[] pixels(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return pixels(new PDFRenderer(document).renderImage(0, 2));
        }
    }

    private static int[] pixels(Consumer<Canvas> drawing) {
        BufferedImage image = new BufferedImage(100, 100, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        drawing.accept(new Canvas(g));
        g.dispose();
        return pixels(image);
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
