package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A crossing between two cuttings: a line through the lanes where both lie on one page, else a letter at each end.
 *
 * @param start where it leaves the reference's box, and the edge of its cutting
 * @param way empty where letters stand instead
 */
record Connector(String letter, Panel from, Panel to, List<Point2D> start, List<Point2D> end, List<Point2D> way) {

    /** Stretch from the reference out of its cutting; the last point lies in the lane. */
    static List<Point2D> out(Panel panel, Rectangle2D reference) {
        Rectangle2D f = panel.frame();
        Point2D corner = panel.place(new Point2D.Double(reference.getX(), reference.getY()));
        Rectangle2D r =
                new Rectangle2D.Double(corner.getX(), corner.getY(), reference.getWidth(), reference.getHeight());
        double left = r.getMinX() - f.getMinX();
        double right = f.getMaxX() - r.getMaxX();
        double below = f.getMaxY() - r.getMaxY();
        double above = r.getMinY() - f.getMinY();
        double least = Math.min(Math.min(left, right), Math.min(below, above));
        double out = 1.5 * LaneRouter.PITCH_PT;
        if (least == above || least == below) {
            double x = clamp(LaneRouter.snap(r.getCenterX()), f.getMinX(), f.getMaxX());
            if (least == below) {
                return line(x, r.getMaxY(), x, LaneRouter.snap(f.getMaxY() + out));
            }
            double top = panel.outer().getMinY();
            return line(x, r.getMinY(), x, LaneRouter.snap(top - out));
        }
        double y = clamp(LaneRouter.snap(r.getCenterY()), f.getMinY(), f.getMaxY());
        return least == left
                ? line(r.getMinX(), y, LaneRouter.snap(f.getMinX() - out), y)
                : line(r.getMaxX(), y, LaneRouter.snap(f.getMaxX() + out), y);
    }

    private static double clamp(double at, double lo, double hi) {
        return Math.max(lo, Math.min(hi, at));
    }

    private static List<Point2D> line(double x0, double y0, double x1, double y1) {
        return List.of(new Point2D.Double(x0, y0), new Point2D.Double(x1, y1));
    }

    /** The whole line from reference to reference. */
    List<Point2D> whole() {
        List<Point2D> all = new ArrayList<>(start);
        all.addAll(way);
        all.add(end.get(1));
        all.add(end.get(0));
        return all;
    }

    boolean isDrawn() {
        return !way.isEmpty();
    }

    static Connector between(
            Panel from,
            Rectangle2D exit,
            Panel to,
            Rectangle2D entry,
            LaneRouter router,
            MatchMarks marks,
            String key) {
        List<Point2D> start = out(from, exit);
        List<Point2D> end = out(to, entry);
        Optional<List<Point2D>> way =
                from.page() == to.page() ? router.route(start.get(1), end.get(1)) : Optional.empty();
        String letter = way.isPresent() ? null : marks.letter(key);
        return new Connector(letter, from, to, start, end, way.orElse(List.of()));
    }
}
