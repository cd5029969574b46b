package linewalk.renderer;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/**
 * A piece of a larger picture laid on a page of the print.
 *
 * @param part of the picture, in the picture's own points
 * @param page counts from 0
 * @param xPt of the piece's top left corner, from the area's corner
 */
record Tile(Rectangle2D part, int page, double xPt, double yPt) {

    AffineTransform onPage(Rectangle2D area) {
        return AffineTransform.getTranslateInstance(area.getX() + xPt - part.getX(), area.getY() + yPt - part.getY());
    }
}
