package linewalk.tests.quality;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** A straight part of a flow line. */
record Segment(Point2D from, Point2D to) {

    /** Nearer than this, in points, two places are one. */
    static final double NEAR_PT = 0.5;

    static List<Segment> of(Thing.Line line) {
        List<Segment> segments = new ArrayList<>();
        for (int i = 1; i < line.course().size(); i++) {
            Segment s = new Segment(line.course().get(i - 1), line.course().get(i));
            if (s.lengthPt() > 1e-6) {
                segments.add(s);
            }
        }
        return segments;
    }

    double lengthPt() {
        return from.distance(to);
    }

    double distancePt(Point2D p) {
        return Line2D.ptSegDist(from.getX(), from.getY(), to.getX(), to.getY(), p.getX(), p.getY());
    }

    /** Both go on beyond the place where they meet, in different directions. */
    boolean crosses(Segment o) {
        if (isAlong(o)
                || !Line2D.linesIntersect(
                        from.getX(),
                        from.getY(),
                        to.getX(),
                        to.getY(),
                        o.from.getX(),
                        o.from.getY(),
                        o.to.getX(),
                        o.to.getY())) {
            return false;
        }
        return distancePt(o.from) > NEAR_PT
                && distancePt(o.to) > NEAR_PT
                && o.distancePt(from) > NEAR_PT
                && o.distancePt(to) > NEAR_PT;
    }

    boolean isAlong(Segment o) {
        double cross = (to.getX() - from.getX()) * (o.to.getY() - o.from.getY())
                - (to.getY() - from.getY()) * (o.to.getX() - o.from.getX());
        return Math.abs(cross) < 0.02 * lengthPt() * o.lengthPt();
    }

    /** How far they run on top of each other. */
    double sharedPt(Segment o) {
        if (!isAlong(o) || Math.min(lineDistance(o.from), lineDistance(o.to)) > NEAR_PT) {
            return 0;
        }
        double a = along(o.from);
        double b = along(o.to);
        return Math.max(0, Math.min(lengthPt(), Math.max(a, b)) - Math.max(0, Math.min(a, b)));
    }

    private double lineDistance(Point2D p) {
        return Line2D.ptLineDist(from.getX(), from.getY(), to.getX(), to.getY(), p.getX(), p.getY());
    }

    double along(Point2D p) {
        double dx = (to.getX() - from.getX()) / lengthPt();
        double dy = (to.getY() - from.getY()) / lengthPt();
        return (p.getX() - from.getX()) * dx + (p.getY() - from.getY()) * dy;
    }

    /** How much of it lies within a box. */
    double withinPt(Rectangle2D box) {
        int steps = (int) Math.ceil(lengthPt() * 4);
        int inside = 0;
        for (int i = 0; i < steps; i++) {
            double t = (i + 0.5) / steps;
            inside += box.contains(
                            from.getX() + t * (to.getX() - from.getX()), from.getY() + t * (to.getY() - from.getY()))
                    ? 1
                    : 0;
        }
        return steps == 0 ? 0 : lengthPt() * inside / steps;
    }
}
