package linewalk.renderer;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A cutting, or a part of one that was too large for the page, at its place on the print.
 *
 * @param stay index of the stay
 * @param part of the view
 * @param page counts from 0
 * @param frame on the page's picture area, counted from its corner, without the caption
 * @param caption lines above the frame
 */
record Panel(int stay, BrokenView view, Rectangle2D part, int page, Rectangle2D frame, List<String> caption) {

    static final double CAPTION_LINE_PT = 13;

    AffineTransform fromView() {
        return AffineTransform.getTranslateInstance(frame.getX() - part.getX(), frame.getY() - part.getY());
    }

    Point2D place(Point2D inView) {
        return fromView().transform(inView, null);
    }

    boolean shows(Point2D inView) {
        return part.contains(inView);
    }

    /** Frame and caption together. */
    Rectangle2D outer() {
        double head = caption.size() * CAPTION_LINE_PT + 4;
        return new Rectangle2D.Double(frame.getX(), frame.getY() - head, frame.getWidth(), frame.getHeight() + head);
    }
}
