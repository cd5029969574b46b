package linewalk.renderer.overlay;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.DocumentId;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/** A PDF whose pages are each of their own size, with an outline; the same bytes for the same drawing. */
final class OverlayBook implements Closeable {

    private static final String TYPEFACE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final PDDocument doc = new PDDocument();
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final PdfBoxGraphics2DFontTextDrawer lettering = new PdfBoxGraphics2DFontTextDrawer();

    OverlayBook() throws IOException {
        try (InputStream in = PDDocument.class.getResourceAsStream(TYPEFACE)) {
            lettering.registerFont(in);
        }
    }

    PDDocument document() {
        return doc;
    }

    /**
     * A new last page.
     *
     * @param unitPt the canvas counts in units of so many points, y downwards from the top left
     */
    Page newPage(double widthPt, double heightPt, double unitPt) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) widthPt, (float) heightPt));
        doc.addPage(page);
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(doc, (float) widthPt, (float) heightPt);
        g.setFontTextDrawer(lettering);
        g.scale(unitPt, unitPt);
        return new Page(page, g);
    }

    void write(String title, LocalDate date, OutputStream out) throws IOException {
        PDDocumentInformation info = new PDDocumentInformation();
        info.setTitle(title);
        info.setProducer("Linewalk");
        GregorianCalendar calendar = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
        calendar.setTimeZone(TimeZone.getTimeZone("UTC"));
        info.setCreationDate(calendar);
        doc.setDocumentInformation(info);
        doc.getDocumentCatalog().getCOSObject().setString(COSName.getPDFName("Lang"), "en");
        PDViewerPreferences viewer = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        viewer.setDisplayDocTitle(true);
        doc.getDocumentCatalog().setViewerPreferences(viewer);
        doc.getDocumentCatalog().setDocumentOutline(outline);
        doc.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
        DocumentId.set(doc, title + date);
        doc.save(out, CompressParameters.DEFAULT_COMPRESSION);
    }

    @Override
    public void close() throws IOException {
        lettering.close();
        doc.close();
    }

    /** One page; an original may lie under everything drawn on the canvas. */
    final class Page {

        private final PDPage page;
        private final PdfBoxGraphics2D g;
        private PDFormXObject original;
        private Matrix toDisplayed;

        private Page(PDPage page, PdfBoxGraphics2D g) {
            this.page = page;
            this.g = g;
        }

        Canvas canvas() {
            return new Canvas(g);
        }

        void lieOver(PDFormXObject form, Matrix formToDisplayed) {
            original = form;
            toDisplayed = formToDisplayed;
        }

        void entry(String name) {
            PDPageFitDestination whole = new PDPageFitDestination();
            whole.setPage(page);
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(name);
            item.setDestination(whole);
            outline.addLast(item);
        }

        void finish() throws IOException {
            g.dispose();
            try (PDPageContentStream content = new PDPageContentStream(doc, page)) {
                if (original != null) {
                    content.saveGraphicsState();
                    content.transform(
                            new Matrix(1, 0, 0, -1, 0, page.getMediaBox().getHeight()));
                    content.transform(toDisplayed);
                    content.drawForm(original);
                    content.restoreGraphicsState();
                }
                content.drawForm(g.getXFormObject());
            }
        }
    }
}
