package linewalk.tests.quality;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Original;
import linewalk.renderer.sheet.Page;
import linewalk.renderer.sheet.PdfBook;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;

/** Our lettering on cuttings of an original: what is seen of the original counts, what is clipped away does not. */
class CuttingOverlapTest {

    /** A cutting of 100 by 100 at the page's left upper corner; the original has a line all across at 60. */
    private static List<String> kinds(Consumer<Canvas> drawing) throws IOException {
        try (PDDocument source = source();
                PdfBook book = new PdfBook(300, 200, "test", LocalDate.EPOCH)) {
            Page page = book.newPage();
            // a page's own space has y upwards
            AffineTransform down = new AffineTransform(1, 0, 0, -1, 0, 200);
            page.place(Original.find(source, 1).orElseThrow(), down, new Rectangle2D.Double(0, 0, 100, 100));
            Canvas canvas = page.canvas();
            canvas.pen(Ink.BLACK, Ink.line(1));
            drawing.accept(canvas);
            page.finish();
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            book.write(0, pdf);
            try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
                return Quality.of(document).overlaps().stream()
                        .map(Overlap::kind)
                        .toList();
            }
        }
    }

    @Test
    void aTextOnALineOfTheOriginalCounts() throws IOException {
        assertThat(kinds(c -> c.text("0V1", 40, 64, 11))).containsExactly("text-cutting");
    }

    @Test
    void besideTheCuttingTheOriginalIsNotSeen() throws IOException {
        assertThat(kinds(c -> c.text("0V1", 140, 64, 11))).isEmpty();
    }

    @Test
    void aPlateUnderTheTextHidesTheOriginal() throws IOException {
        assertThat(kinds(c -> {
                    c.fill(Color.WHITE, new Rectangle2D.Double(36, 50, 40, 20));
                    c.text("0V1", 40, 64, 11);
                }))
                .isEmpty();
    }

    /** A page with a line all across, 60 below its upper edge. */
    private static PDDocument source() throws IOException {
        PDDocument source = new PDDocument();
        PDPage page = new PDPage(new PDRectangle(300, 200));
        source.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(source, page)) {
            content.setLineWidth(1);
            content.moveTo(0, 140);
            content.lineTo(300, 140);
            content.stroke();
        }
        return source;
    }
}
