package linewalk.renderer.link;

import java.util.List;
import linewalk.drawing.Sheet;
import linewalk.renderer.copy.SourceCopy;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** An entry a sheet, by number and title, behind the entries that the file has already. */
final class SheetOutline {

    private SheetOutline() {}

    static void add(SourceCopy copy, List<Sheet> sheets) {
        PDDocumentCatalog catalog = copy.document().getDocumentCatalog();
        PDDocumentOutline outline = catalog.getDocumentOutline();
        if (outline == null) {
            outline = new PDDocumentOutline();
            catalog.setDocumentOutline(outline);
            copy.changed(catalog.getCOSObject());
        } else {
            copy.changed(outline.getCOSObject());
            if (outline.getLastChild() != null) {
                copy.changed(outline.getLastChild().getCOSObject());
            }
        }
        for (Sheet s : sheets) {
            PDPageFitDestination whole = new PDPageFitDestination();
            whole.setPage(copy.page(s.page().page()));
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle("Sheet " + s.name() + (s.title() == null ? "" : ": " + s.title()));
            item.setDestination(whole);
            outline.addLast(item);
        }
    }
}
