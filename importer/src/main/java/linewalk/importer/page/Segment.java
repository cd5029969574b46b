package linewalk.importer.page;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/** A straight piece between two points. */
public record Segment(Point a, Point b) {

    /** The straight pieces of strokes; curved strokes are left out. */
    public static List<Segment> straightOf(List<Stroke> strokes) {
        List<Segment> out = new ArrayList<>();
        for (Stroke s : strokes) {
            for (int i = 1; i < s.points().size() && !s.curved(); i++) {
                out.add(new Segment(s.points().get(i - 1), s.points().get(i)));
            }
            if (s.closed() && !s.curved()) {
                out.add(new Segment(s.points().get(s.points().size() - 1), s.first()));
            }
        }
        return out;
    }

    /** The pieces of a polyline. */
    public static List<Segment> of(List<Point> points) {
        List<Segment> out = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            out.add(new Segment(points.get(i - 1), points.get(i)));
        }
        return out;
    }

    /** @param share 0 at one end, 1 at the other */
    public Point at(double share) {
        return new Point(a.xPt() + share * (b.xPt() - a.xPt()), a.yPt() + share * (b.yPt() - a.yPt()));
    }

    public double lengthPt() {
        return a.distancePt(b);
    }

    public Box box() {
        return Box.around(a).union(Box.around(b));
    }

    /** The point on the segment nearest to p. */
    public Point nearest(Point p) {
        double t = position(p);
        return new Point(a.xPt() + t * (b.xPt() - a.xPt()), a.yPt() + t * (b.yPt() - a.yPt()));
    }

    /** Where p projects onto the segment, 0 at a, 1 at b, held within. */
    public double position(Point p) {
        double dx = b.xPt() - a.xPt();
        double dy = b.yPt() - a.yPt();
        double square = dx * dx + dy * dy;
        if (square == 0) {
            return 0;
        }
        double t = ((p.xPt() - a.xPt()) * dx + (p.yPt() - a.yPt()) * dy) / square;
        return Math.max(0, Math.min(1, t));
    }

    public double distancePt(Point p) {
        return p.distancePt(nearest(p));
    }

    public boolean horizontal() {
        return Math.abs(a.yPt() - b.yPt()) < 0.02 * Math.abs(a.xPt() - b.xPt()) + 0.01;
    }

    public boolean vertical() {
        return Math.abs(a.xPt() - b.xPt()) < 0.02 * Math.abs(a.yPt() - b.yPt()) + 0.01;
    }

    /** Where two segments cross inside both, or null. */
    public Point crossing(Segment o) {
        double rx = b.xPt() - a.xPt();
        double ry = b.yPt() - a.yPt();
        double sx = o.b.xPt() - o.a.xPt();
        double sy = o.b.yPt() - o.a.yPt();
        double det = rx * sy - ry * sx;
        if (Math.abs(det) < 1e-9) {
            return null;
        }
        double t = ((o.a.xPt() - a.xPt()) * sy - (o.a.yPt() - a.yPt()) * sx) / det;
        double u = ((o.a.xPt() - a.xPt()) * ry - (o.a.yPt() - a.yPt()) * rx) / det;
        return t < 0 || t > 1 || u < 0 || u > 1 ? null : a.plus(t * rx, t * ry);
    }
}
