package linewalk.tests;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/**
 * Two plain sheets joined by one pair of references, and what a revision changes on the first.
 *
 * @param rightPt how far the reference on sheet 1 stands to the right of its first place
 * @param says its text
 */
record TwoSheets(double rightPt, String says) {

    /** Where the references stand, as displayed. */
    static final double ONE_X_PT = 610;

    static final double TWO_X_PT = 310;
    static final double Y_PT = 295;

    static TwoSheets firstIssue() {
        return new TwoSheets(0, "TO SHEET 2");
    }

    /** Draws the set over whatever the file held. */
    Path drawTo(Path file) {
        try (PDDocument document = new PDDocument()) {
            page(document, "SHEET 1 OF 2", ONE_X_PT + rightPt, says);
            page(document, "SHEET 2 OF 2", TWO_X_PT, "FROM SHEET 1");
            document.save(file.toFile());
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void page(PDDocument document, String title, double xPt, String text) throws IOException {
        PDPage page = new PDPage(new PDRectangle(842, 595));
        document.addPage(page);
        PDType1Font font = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            stream.moveTo(100, 300);
            stream.lineTo((float) xPt - 4, 300);
            stream.stroke();
            text(stream, font, xPt, 297, text);
            text(stream, font, 250, 303, "L-7");
            text(stream, font, 740, 30, title);
        }
    }

    private static void text(PDPageContentStream stream, PDType1Font font, double xPt, double upPt, String text)
            throws IOException {
        stream.beginText();
        stream.setFont(font, 9);
        stream.newLineAtOffset((float) xPt, (float) upPt);
        stream.showText(text);
        stream.endText();
    }
}
