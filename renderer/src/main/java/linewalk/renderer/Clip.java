package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Cuts a course to a rectangle: the pieces inside, and where it passes the edge. */
final class Clip {

    /**
     * A place where the course passes the rectangle's edge.
     *
     * @param atPt how far along the whole course
     * @param leaving in the course's direction
     */
    record Cut(Point2D place, double atPt, boolean leaving) {}

    final List<List<Point2D>> pieces = new ArrayList<>();
    final List<Cut> cuts = new ArrayList<>();
    private List<Point2D> piece = new ArrayList<>();

    Clip(List<Point2D> course, Rectangle2D box) {
        double along = 0;
        for (int i = 1; i < course.size(); i++) {
            Point2D p = course.get(i - 1);
            Point2D q = course.get(i);
            double length = p.distance(q);
            if (length > 0) {
                take(p, q, along, inside(p, q, box), i == 1 || along == 0);
                along += length;
            }
        }
        if (piece.size() > 1) {
            pieces.add(piece);
        }
    }

    /** A course may also pass the edge just where two of its straight parts meet. */
    private void take(Point2D p, Point2D q, double along, double[] t, boolean first) {
        boolean wasInside = !piece.isEmpty();
        if (wasInside && (t == null || t[0] > 0)) {
            leave(p, along);
        }
        if (t == null) {
            return;
        }
        if (piece.isEmpty()) {
            Point2D from = between(p, q, t[0]);
            piece.add(from);
            if (t[0] > 0 || !first) {
                cuts.add(new Cut(from, along + t[0] * p.distance(q), false));
            }
        }
        piece.add(between(p, q, t[1]));
        if (t[1] < 1) {
            leave(between(p, q, t[1]), along + t[1] * p.distance(q));
        }
    }

    private void leave(Point2D place, double atPt) {
        cuts.add(new Cut(place, atPt, true));
        pieces.add(piece);
        piece = new ArrayList<>();
    }

    private static Point2D between(Point2D p, Point2D q, double t) {
        return new Point2D.Double(p.getX() + t * (q.getX() - p.getX()), p.getY() + t * (q.getY() - p.getY()));
    }

    /** The share of the segment inside the box, from and to; null where none of its length is. */
    private static double[] inside(Point2D p, Point2D q, Rectangle2D box) {
        double[] t = {0, 1};
        double dx = q.getX() - p.getX();
        double dy = q.getY() - p.getY();
        boolean meets = narrow(t, -dx, p.getX() - box.getMinX())
                && narrow(t, dx, box.getMaxX() - p.getX())
                && narrow(t, -dy, p.getY() - box.getMinY())
                && narrow(t, dy, box.getMaxY() - p.getY());
        return meets && (t[1] - t[0]) * Math.hypot(dx, dy) > 1e-6 ? t : null;
    }

    private static boolean narrow(double[] t, double d, double room) {
        if (d == 0) {
            return room >= 0;
        }
        double at = room / d;
        if (d > 0) {
            t[1] = Math.min(t[1], at);
        } else {
            t[0] = Math.max(t[0], at);
        }
        return t[0] < t[1];
    }
}
