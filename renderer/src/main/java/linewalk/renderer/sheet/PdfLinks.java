package linewalk.renderer.sheet;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitRectangleDestination;

/** The links of a PDF, from an area of a page to an area of the same or another one. */
final class PdfLinks {

    /** Room around what is led to, so that it is seen with its neighbours. */
    private static final double AROUND_PT = 100;

    /** Areas with y downwards, pages from 0. */
    record Link(int fromPage, Rectangle2D from, int toPage, Rectangle2D to) {}

    private final List<Link> links = new ArrayList<>();

    void add(Link link) {
        links.add(link);
    }

    /** @throws IllegalStateException a link leads to a page that was never made */
    void into(PDDocument doc) throws IOException {
        for (Link l : links) {
            if (l.toPage() < 0 || l.toPage() >= doc.getNumberOfPages()) {
                throw new IllegalStateException("a link leads to page " + l.toPage() + ", which was never made");
            }
            PDPage on = doc.getPage(l.fromPage());
            PDAnnotationLink annotation = new PDAnnotationLink();
            annotation.setRectangle(upwards(on, l.from()));
            annotation.setHighlightMode(PDAnnotationLink.HIGHLIGHT_MODE_INVERT);
            PDBorderStyleDictionary none = new PDBorderStyleDictionary();
            none.setWidth(0);
            annotation.setBorderStyle(none);
            annotation.setPrinted(false);
            annotation.setPage(on);
            PDActionGoTo go = new PDActionGoTo();
            go.setDestination(destination(doc.getPage(l.toPage()), l.to()));
            annotation.setAction(go);
            on.getAnnotations().add(annotation);
        }
    }

    private static PDPageFitRectangleDestination destination(PDPage page, Rectangle2D to) {
        Rectangle2D room = new Rectangle2D.Double(
                to.getX() - AROUND_PT,
                to.getY() - AROUND_PT,
                to.getWidth() + 2 * AROUND_PT,
                to.getHeight() + 2 * AROUND_PT);
        // within the page, and not at -1 of it, which PDFBox takes for no number at all
        PDRectangle paper = page.getMediaBox();
        PDRectangle up = upwards(
                page, room.createIntersection(new Rectangle2D.Double(0, 0, paper.getWidth(), paper.getHeight())));
        PDPageFitRectangleDestination destination = new PDPageFitRectangleDestination();
        destination.setPage(page);
        destination.setLeft((int) Math.floor(up.getLowerLeftX()));
        destination.setBottom((int) Math.floor(up.getLowerLeftY()));
        destination.setRight((int) Math.ceil(up.getUpperRightX()));
        destination.setTop((int) Math.ceil(up.getUpperRightY()));
        return destination;
    }

    private static PDRectangle upwards(PDPage page, Rectangle2D r) {
        float heightPt = page.getMediaBox().getHeight();
        return new PDRectangle(
                (float) r.getX(), (float) (heightPt - r.getMaxY()), (float) r.getWidth(), (float) r.getHeight());
    }
}
