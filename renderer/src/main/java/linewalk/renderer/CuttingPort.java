package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;

/**
 * Where a crossing leaves or enters a cutting: past the edge that the line at the reference points to, if that is not
 * far, else past the nearest.
 *
 * @param reference its box in the view
 */
record CuttingPort(Rectangle2D reference, Edge edge) {

    enum Edge {
        LEFT,
        RIGHT,
        TOP,
        BOTTOM
    }

    /** A reference deeper inside its cutting than this leaves by the nearest edge. */
    private static final double DEEP_PT = 90;
    /** How far outside its cutting a connector's lane begins. */
    private static final double OUT_PT = 3 * LaneRouter.PITCH_PT;

    /**
     * @param before a place on the line before its end at the reference, such as its last bend; or null
     * @param end where the line stops, or the reference's middle where it runs into it
     */
    static CuttingPort of(BrokenView view, Rectangle2D part, Reference reference, Point before, Point end) {
        Rectangle2D box = view.map(reference);
        Edge edge = nearest(part, box);
        if (before != null) {
            Edge ahead = ahead(before, end);
            edge = depth(part, box, ahead) <= DEEP_PT ? ahead : edge;
        }
        return new CuttingPort(box, edge);
    }

    private static Edge ahead(Point from, Point to) {
        double dx = to.xPt() - from.xPt();
        double dy = to.yPt() - from.yPt();
        if (Math.abs(dx) > Math.abs(dy)) {
            return dx > 0 ? Edge.RIGHT : Edge.LEFT;
        }
        return dy > 0 ? Edge.BOTTOM : Edge.TOP;
    }

    private static Edge nearest(Rectangle2D part, Rectangle2D box) {
        Edge best = Edge.LEFT;
        for (Edge e : Edge.values()) {
            if (depth(part, box, e) < depth(part, box, best)) {
                best = e;
            }
        }
        return best;
    }

    private static double depth(Rectangle2D part, Rectangle2D box, Edge edge) {
        return switch (edge) {
            case LEFT -> box.getMinX() - part.getMinX();
            case RIGHT -> part.getMaxX() - box.getMaxX();
            case TOP -> box.getMinY() - part.getMinY();
            case BOTTOM -> part.getMaxY() - box.getMaxY();
        };
    }

    /** The same port past another edge, where the caption stands in the way. */
    CuttingPort avoiding(Edge taken, Rectangle2D part) {
        if (edge != taken) {
            return this;
        }
        boolean left = depth(part, reference, Edge.LEFT) < depth(part, reference, Edge.RIGHT);
        return new CuttingPort(reference, left ? Edge.LEFT : Edge.RIGHT);
    }

    /** From the reference's box straight out of the cutting; the second point lies in a lane. */
    List<Point2D> out(Panel panel) {
        Rectangle2D f = panel.frame();
        Point2D corner = panel.place(new Point2D.Double(reference.getX(), reference.getY()));
        Rectangle2D r =
                new Rectangle2D.Double(corner.getX(), corner.getY(), reference.getWidth(), reference.getHeight());
        double x = clamp(LaneRouter.snap(r.getCenterX()), f.getMinX(), f.getMaxX());
        double y = clamp(LaneRouter.snap(r.getCenterY()), f.getMinY(), f.getMaxY());
        return switch (edge) {
            case LEFT -> line(r.getMinX(), y, LaneRouter.snap(f.getMinX() - OUT_PT), y);
            case RIGHT -> line(r.getMaxX(), y, LaneRouter.snap(f.getMaxX() + OUT_PT), y);
            case TOP -> line(x, r.getMinY(), x, LaneRouter.snap(f.getMinY() - OUT_PT));
            case BOTTOM -> line(x, r.getMaxY(), x, LaneRouter.snap(f.getMaxY() + OUT_PT));
        };
    }

    private static double clamp(double at, double lo, double hi) {
        return Math.max(lo, Math.min(hi, at));
    }

    private static List<Point2D> line(double x0, double y0, double x1, double y1) {
        return List.of(new Point2D.Double(x0, y0), new Point2D.Double(x1, y1));
    }
}
