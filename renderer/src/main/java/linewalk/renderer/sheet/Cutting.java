package linewalk.renderer.sheet;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * A part of an original on a page of a print.
 *
 * @param toPrint from the original's user space (y upwards, before rotation) to the page
 * @param clip on the page
 */
record Cutting(Original original, AffineTransform toPrint, Rectangle2D clip) {

    /** Paints the whole original, without its annotations, as a PDF shows it that has the page as a form. */
    void paint(Graphics2D g) throws IOException {
        PDFRenderer renderer = new PDFRenderer(original.document());
        renderer.setAnnotationsFilter(annotation -> false);
        g.transform(toPrint);
        try {
            g.transform(shown(original.page()).createInverse());
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("turns and mirrors can be turned back", e);
        }
        renderer.renderPageToGraphics(original.index(), g);
    }

    /** Where the renderer itself puts a page's user space: its crop box upright, top left corner in the origin. */
    private static AffineTransform shown(PDPage page) {
        PDRectangle crop = page.getCropBox();
        int turns = Math.floorMod(page.getRotation() / 90, 4);
        AffineTransform at = new AffineTransform();
        at.translate(
                turns == 1 ? crop.getHeight() : turns == 2 ? crop.getWidth() : 0,
                turns == 3 ? crop.getWidth() : turns == 2 ? crop.getHeight() : 0);
        at.quadrantRotate(turns);
        at.translate(0, crop.getHeight());
        at.scale(1, -1);
        at.translate(-crop.getLowerLeftX(), -crop.getLowerLeftY());
        return at;
    }
}
