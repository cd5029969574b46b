package linewalk.renderer.sheet;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.util.Matrix;

/** A PDF being made: pages of one size, the typeface embedded, the same bytes for the same drawing. */
public final class PdfBook implements Closeable {

    private final PDDocument doc = new PDDocument();
    private final PdfBoxGraphics2DFontTextDrawer lettering = new PdfBoxGraphics2DFontTextDrawer();
    private final List<Bookmark> bookmarks = new ArrayList<>();
    private final float widthPt;
    private final float heightPt;

    public PdfBook(double widthPt, double heightPt) throws IOException {
        this.widthPt = (float) widthPt;
        this.heightPt = (float) heightPt;
        try (InputStream in = Lettering.open()) {
            lettering.registerFont(in);
        }
    }

    public PDDocument document() {
        return doc;
    }

    public Page newPage() throws IOException {
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(doc, widthPt, heightPt);
        g.setFontTextDrawer(lettering);
        return new Page(g);
    }

    private record Bookmark(String title, int page) {}

    /** A bookmark to the next page made, or to none. */
    public void bookmark(String title, boolean toNextPage) {
        bookmarks.add(new Bookmark(title, toNextPage ? doc.getNumberOfPages() : -1));
    }

    private void writeBookmarks() {
        PDDocumentOutline outline = new PDDocumentOutline();
        for (Bookmark b : bookmarks) {
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(b.title());
            if (b.page() >= 0) {
                item.setDestination(doc.getPage(b.page()));
            }
            outline.addLast(item);
        }
        doc.getDocumentCatalog().setDocumentOutline(outline);
    }

    public void write(String title, LocalDate date, OutputStream out) throws IOException {
        PDDocumentInformation info = new PDDocumentInformation();
        info.setTitle(title);
        info.setProducer("Linewalk");
        GregorianCalendar calendar = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
        calendar.setTimeZone(TimeZone.getTimeZone("UTC"));
        info.setCreationDate(calendar);
        doc.setDocumentInformation(info);
        if (!bookmarks.isEmpty()) {
            writeBookmarks();
        }
        doc.getDocumentCatalog().getCOSObject().setString(COSName.getPDFName("Lang"), "en");
        doc.setDocumentId(31L * title.hashCode() + date.toEpochDay());
        doc.save(out, CompressParameters.DEFAULT_COMPRESSION);
    }

    @Override
    public void close() throws IOException {
        lettering.close();
        doc.close();
    }

    private record Cutting(PDFormXObject form, AffineTransform toPrint, Rectangle2D clip) {}

    /** One page. Cuttings lie under everything drawn on the canvas. */
    public final class Page {

        private final PdfBoxGraphics2D g;
        private final List<Cutting> cuttings = new ArrayList<>();

        private Page(PdfBoxGraphics2D g) {
            this.g = g;
        }

        public Canvas canvas() {
            return new Canvas(g);
        }

        /**
         * Lays a form under the drawing.
         *
         * @param toPrint from the form's space to this page, y downwards
         * @param clip on this page
         */
        public void place(PDFormXObject form, AffineTransform toPrint, Rectangle2D clip) {
            cuttings.add(new Cutting(form, toPrint, clip));
        }

        /** Adds the page to the book; nothing can be drawn after. */
        public void finish() throws IOException {
            g.dispose();
            PDPage page = new PDPage(new PDRectangle(widthPt, heightPt));
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
            content.drawForm(c.form());
            content.restoreGraphicsState();
        }
    }
}
