package linewalk.renderer.sheet;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.multipdf.LayerUtility;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/** A PDF in one file: the typeface embedded, an outline, links. */
public final class PdfBook implements Book {

    /** Of all books: what is read of it is kept. */
    private static final TrueTypeFont TYPEFACE = typeface();

    private final PDDocument doc = new PDDocument();
    final PdfOutline outline = new PdfOutline();
    /** Layers that a viewer can show and hide. */
    final PdfLayers switched = new PdfLayers();

    private final List<PdfPage> pages = new ArrayList<>();
    private final PdfLinks links = new PdfLinks();
    private final PdfBoxGraphics2DFontTextDrawer lettering = new PdfBoxGraphics2DFontTextDrawer();
    private final LayerUtility layers = new LayerUtility(doc);
    private final Map<Original, PDFormXObject> forms = new HashMap<>();
    private final String title;
    private final LocalDate date;
    private final PDRectangle size;

    public PdfBook(double widthPt, double heightPt, String title, LocalDate date) throws IOException {
        this.title = title;
        this.date = date;
        size = new PDRectangle((float) widthPt, (float) heightPt);
        lettering.registerFont(Lettering.FAMILY, PDType0Font.load(doc, TYPEFACE, true));
    }

    private static TrueTypeFont typeface() {
        try (InputStream in = Lettering.open()) {
            TrueTypeFont typeface = new TTFParser().parse(new RandomAccessReadBuffer(in));
            // ligatures would be looked for in every text, which takes as long as all else that is drawn
            typeface.setEnableGsub(false);
            return typeface;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public int pages() {
        return pages.size();
    }

    @Override
    public int files() {
        return 1;
    }

    @Override
    public Page newPage() throws IOException {
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(doc, size.getWidth(), size.getHeight());
        g.setFontTextDrawer(lettering);
        return new PdfPage(this, new PDPage(size), g);
    }

    @Override
    public void bookmark(String title, boolean toNextPage) {
        outline.chapter(title, toNextPage ? pages() : PdfOutline.NOWHERE);
    }

    void add(PdfPage page) {
        pages.add(page);
    }

    void link(PdfLinks.Link link) {
        links.add(link);
    }

    /** The page in its own user space, once for the whole book. */
    PDFormXObject form(Original original) throws IOException {
        PDFormXObject form = forms.get(original);
        if (form == null) {
            form = layers.importPageAsForm(original.document(), original.index());
            // the placing already knows of rotation and crop box
            form.setMatrix(new Matrix().createAffineTransform());
            form.setBBox(original.page().getCropBox());
            forms.put(original, form);
        }
        return form;
    }

    @Override
    public void write(int file, OutputStream out) throws IOException {
        prepare();
        doc.save(out, CompressParameters.DEFAULT_COMPRESSION);
    }

    private void prepare() throws IOException {
        for (PdfPage page : pages) {
            page.into(doc);
        }
        outline.into(doc);
        links.into(doc);
        switched.into(doc);
        PDDocumentInformation info = new PDDocumentInformation();
        info.setTitle(title);
        info.setProducer("Linewalk");
        GregorianCalendar calendar = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
        calendar.setTimeZone(TimeZone.getTimeZone("UTC"));
        info.setCreationDate(calendar);
        doc.setDocumentInformation(info);
        PDDocumentCatalog catalog = doc.getDocumentCatalog();
        catalog.setLanguage("en");
        PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
        viewer.setDisplayDocTitle(true);
        catalog.setViewerPreferences(viewer);
        DocumentId.set(doc, title + date);
    }

    @Override
    public void close() throws IOException {
        lettering.close();
        doc.close();
    }
}
