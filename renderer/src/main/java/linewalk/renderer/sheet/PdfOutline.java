package linewalk.renderer.sheet;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** The bookmarks of a PDF: chapters and entries under them; entries alone where there is no chapter. */
final class PdfOutline {

    static final int NOWHERE = -1;

    private record Entry(boolean isChapter, String title, int page, double yPt) {}

    private final List<Entry> entries = new ArrayList<>();

    /** @param page in the document from 0, or {@link #NOWHERE} */
    void chapter(String title, int page) {
        entries.add(new Entry(true, title, page, 0));
    }

    /** @param yPt downwards from the top of the page */
    void entry(String title, int page, double yPt) {
        entries.add(new Entry(false, title, page, yPt));
    }

    void into(PDDocument doc) {
        if (entries.isEmpty()) {
            return;
        }
        PDDocumentOutline outline = new PDDocumentOutline();
        PDOutlineItem chapter = null;
        for (Entry e : entries) {
            PDOutlineItem item = item(doc, e);
            if (e.isChapter() || chapter == null) {
                outline.addLast(item);
            } else {
                chapter.addLast(item);
            }
            chapter = e.isChapter() ? item : chapter;
        }
        doc.getDocumentCatalog().setDocumentOutline(outline);
        doc.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
    }

    private static PDOutlineItem item(PDDocument doc, Entry e) {
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(e.title());
        if (e.page() != NOWHERE) {
            PDPage page = doc.getPage(e.page());
            PDPageXYZDestination to = new PDPageXYZDestination();
            to.setPage(page);
            to.setLeft(0);
            to.setTop((int) Math.ceil(page.getMediaBox().getHeight() - e.yPt()));
            item.setDestination(to);
        }
        return item;
    }
}
