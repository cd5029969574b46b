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
 * @param entry where the path enters from another cutting, or null
 * @param exit where it leaves to another, or null
 */
record Panel(
        int stay,
        BrokenView view,
        Rectangle2D part,
        int page,
        Rectangle2D frame,
        Caption caption,
        CuttingPort entry,
        CuttingPort exit) {

    /** The words above or below a cutting, and how far from it they keep: match marks stand between. */
    record Caption(List<String> lines, double widthPt, boolean below, double apartPt) {
        static final double LINE_PT = 13;

        double heightPt() {
            return lines.size() * LINE_PT + apartPt;
        }
    }

    AffineTransform fromView() {
        return AffineTransform.getTranslateInstance(frame.getX() - part.getX(), frame.getY() - part.getY());
    }

    Point2D place(Point2D inView) {
        return fromView().transform(inView, null);
    }

    boolean shows(Point2D inView) {
        return part.contains(inView);
    }

    Rectangle2D captionBox() {
        double y = caption.below() ? frame.getMaxY() + caption.apartPt() - 2 : frame.getMinY() - caption.heightPt();
        return new Rectangle2D.Double(
                frame.getX(), y, caption.widthPt(), caption.lines().size() * Caption.LINE_PT);
    }
}
