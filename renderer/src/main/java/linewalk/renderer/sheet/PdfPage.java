package linewalk.renderer.sheet;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/** One page of a PDF. */
final class PdfPage implements Page {

    private final PdfBook book;
    private final PDPage page;
    private final PdfBoxGraphics2D g;
    private final int number;
    private final float heightPt;
    private final List<Cutting> cuttings = new ArrayList<>();

    PdfPage(PdfBook book, PDPage page, PdfBoxGraphics2D g) {
        this.book = book;
        this.page = page;
        this.g = g;
        number = book.pages();
        heightPt = page.getMediaBox().getHeight();
    }

    @Override
    public int number() {
        return number;
    }

    @Override
    public Canvas canvas() {
        return new Canvas(g, book.switched);
    }

    @Override
    public void place(Original original, AffineTransform toPrint, Rectangle2D clip) {
        cuttings.add(new Cutting(original, toPrint, clip));
    }

    @Override
    public void link(Rectangle2D from, int page, Rectangle2D to) {
        book.link(new PdfLinks.Link(number, from, page, to));
    }

    @Override
    public void bookmark(String title, double yPt) {
        book.outline.entry(title, number, yPt);
    }

    @Override
    public void finish() throws IOException {
        g.dispose();
        book.doc.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(book.doc, page)) {
            for (Cutting c : cuttings) {
                paint(content, c);
            }
            content.drawForm(g.getXFormObject());
        }
    }

    private void paint(PDPageContentStream content, Cutting c) throws IOException {
        AffineTransform up = new AffineTransform(1, 0, 0, -1, 0, heightPt);
        up.concatenate(c.toPrint());
        content.saveGraphicsState();
        content.addRect(
                (float) c.clip().getX(),
                (float) (heightPt - c.clip().getMaxY()),
                (float) c.clip().getWidth(),
                (float) c.clip().getHeight());
        content.clip();
        content.transform(new Matrix(up));
        content.drawForm(book.form(c.original()));
        content.restoreGraphicsState();
    }
}
