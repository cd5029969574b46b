package linewalk.renderer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** The /ID of a PDF (ISO 32000-1, 14.4) tells one drawing from another and knows no clock. */
class DocumentIdTest {

    private static byte[] drawn(String words, LocalDate date) throws IOException {
        try (PdfBook book = new PdfBook(400, 300, "0P1 to TANK", date)) {
            Page page = book.newPage();
            Canvas canvas = page.canvas();
            canvas.pen(Ink.BLACK, Ink.line(1));
            canvas.text(words, 50, 50, 12);
            page.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(0, out);
            return out.toByteArray();
        }
    }

    private static String id(byte[] pdf) throws IOException {
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            COSArray id = doc.getDocument().getDocumentID();
            return ((COSString) id.getObject(0)).toHexString();
        }
    }

    @Test
    void theSameDrawingIsTheSameFile() throws IOException {
        assertThat(drawn("1V1", LocalDate.EPOCH)).isEqualTo(drawn("1V1", LocalDate.EPOCH));
    }

    @Test
    void anotherDrawingUnderTheSameTitleIsAnotherDocument() throws IOException {
        assertThat(id(drawn("1V1", LocalDate.EPOCH))).isNotEqualTo(id(drawn("1V2", LocalDate.EPOCH)));
    }

    @Test
    void anotherDayIsAnotherDocument() throws IOException {
        assertThat(id(drawn("1V1", LocalDate.EPOCH))).isNotEqualTo(id(drawn("1V1", LocalDate.EPOCH.plusDays(1))));
    }
}
