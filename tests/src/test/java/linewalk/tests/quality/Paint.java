package linewalk.tests.quality;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * One painted path, in points of the page, y downwards.
 *
 * @param order of painting
 * @param pen null for a fill
 * @param isLight white or nearly: seen only where it covers something
 * @param isOpaque hides what lies beneath
 * @param owner the marked line or symbol it belongs to, or null
 * @param clip what is seen of it, or null for all
 * @param inCutting part of an original drawing, not of our own
 */
record Paint(
        int order,
        Shape path,
        BasicStroke pen,
        boolean isLight,
        boolean isOpaque,
        Thing owner,
        Shape clip,
        boolean inCutting) {

    boolean isFill() {
        return pen == null;
    }

    /** Where ink may be, quickly told. */
    Rectangle2D bounds() {
        Rectangle2D b = path.getBounds2D();
        double half = pen == null ? 0 : pen.getLineWidth();
        Rectangle2D wide = new Rectangle2D.Double(
                b.getX() - half, b.getY() - half, b.getWidth() + 2 * half, b.getHeight() + 2 * half);
        return clip == null ? wide : wide.createIntersection(clip.getBounds2D());
    }

    boolean isNear(Rectangle2D box) {
        Rectangle2D b = bounds();
        return b.getMinX() < box.getMaxX()
                && b.getMaxX() > box.getMinX()
                && b.getMinY() < box.getMaxY()
                && b.getMaxY() > box.getMinY();
    }

    /** What is painted within a box. */
    Area within(Rectangle2D box) {
        Shape shape = pen == null ? path : pen.createStrokedShape(path);
        if (!shape.intersects(box)) {
            return new Area();
        }
        Area area = new Area(shape);
        area.intersect(new Area(box));
        if (clip != null) {
            area.intersect(new Area(clip));
        }
        return area;
    }

    boolean contains(Rectangle2D box) {
        return isFill() && path.contains(box) && (clip == null || clip.contains(box));
    }

    /** Corners of the path, curves flattened. */
    List<Point2D> points() {
        List<Point2D> points = new ArrayList<>();
        double[] xy = new double[6];
        for (PathIterator i = path.getPathIterator(null, 0.3); !i.isDone(); i.next()) {
            if (i.currentSegment(xy) != PathIterator.SEG_CLOSE) {
                points.add(new Point2D.Double(xy[0], xy[1]));
            }
        }
        return points;
    }
}
