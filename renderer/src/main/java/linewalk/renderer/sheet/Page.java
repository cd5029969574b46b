package linewalk.renderer.sheet;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;

/** One page of a print. Originals lie under everything drawn on the canvas. */
public interface Page {

    /** Its place in the book, from 0. */
    int number();

    Canvas canvas();

    /**
     * Lays a cutting of an original under the drawing.
     *
     * @param toPrint from the original's user space (y upwards, before rotation) to this page
     * @param clip on this page
     */
    void place(Original original, AffineTransform toPrint, Rectangle2D clip);

    /**
     * Makes an area of this page lead to an area of any page of the book, one made later too. Left out where the
     * format has no links between pages.
     *
     * @param page its number in the book
     */
    void link(Rectangle2D from, int page, Rectangle2D to);

    /** A bookmark to a height of this page, under the book's last one. Left out where the format has none. */
    void bookmark(String title, double yPt);

    /** Adds the page to the book; nothing can be drawn on it after. */
    void finish() throws IOException;
}
