package linewalk.renderer.sheet;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import org.apache.pdfbox.pdmodel.PDDocument;
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
    private final ForkJoinTask<?> packed;

    PdfPage(PdfBook book, PDPage page, PdfBoxGraphics2D g) {
        this.book = book;
        this.page = page;
        this.g = g;
        number = book.pages();
        heightPt = page.getMediaBox().getHeight();
        packed = ForkJoinTask.adapt(g::dispose);
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

    /** The drawing is packed while other pages are drawn. Originals are taken over now: they may be closed after. */
    @Override
    public void finish() throws IOException {
        packed.fork();
        for (Cutting c : cuttings) {
            book.form(c.original());
        }
        book.add(this);
    }

    /** Adds the page to the document, once its drawing is packed. */
    void into(PDDocument doc) throws IOException {
        packed.join();
        doc.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(doc, page)) {
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
