package linewalk.importer.symbol;

import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * A closed stroke seen as a region.
 *
 * @param bracket drawn open on one side
 */
public record Outline(Stroke stroke, Box box, boolean bracket) {

    static Outline of(Stroke stroke) {
        return new Outline(stroke, stroke.box(), false);
    }

    /** An open stroke of three sides, seen as the box that it stands for. */
    static Outline bracket(Stroke s) {
        Stroke closed = new Stroke(s.points(), true, false, s.widthPt(), s.dash(), false);
        return new Outline(closed, closed.box(), true);
    }

    public int corners() {
        return stroke.points().size();
    }

    Segment side(int i) {
        int n = corners();
        return new Segment(stroke.points().get(i), stroke.points().get((i + 1) % n));
    }

    /** Even-odd rule. */
    public boolean covers(Point p) {
        if (!box.contains(p)) {
            return false;
        }
        boolean inside = false;
        int n = corners();
        for (int i = 0, j = n - 1; i < n; j = i++) {
            Point a = stroke.points().get(i);
            Point b = stroke.points().get(j);
            if ((a.yPt() > p.yPt()) != (b.yPt() > p.yPt())
                    && p.xPt() < (b.xPt() - a.xPt()) * (p.yPt() - a.yPt()) / (b.yPt() - a.yPt()) + a.xPt()) {
                inside = !inside;
            }
        }
        return inside;
    }

    public double edgeDistancePt(Point p) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < corners(); i++) {
            least = Math.min(least, side(i).distancePt(p));
        }
        return least;
    }

    /** Round: all points equally far from the centre. */
    public boolean circle() {
        if (corners() < 8 || Math.abs(box.widthPt() - box.heightPt()) > 0.1 * box.widthPt()) {
            return false;
        }
        Point c = box.center();
        double r = box.widthPt() / 2;
        return stroke.points().stream().allMatch(p -> Math.abs(p.distancePt(c) - r) < 0.12 * r);
    }

    boolean rectangle() {
        if (corners() != 4) {
            return false;
        }
        for (int i = 0; i < 4; i++) {
            if (!side(i).horizontal() && !side(i).vertical()) {
                return false;
            }
        }
        return true;
    }

    /** The outlines touch, overlap, or one holds the other. */
    public boolean meets(Outline o, double tolPt) {
        if (!box.grow(tolPt).intersects(o.box)) {
            return false;
        }
        if (covers(o.stroke.first()) || o.covers(stroke.first())) {
            return true;
        }
        for (int i = 0; i < corners(); i++) {
            for (int j = 0; j < o.corners(); j++) {
                Segment a = side(i);
                Segment b = o.side(j);
                if (a.crossing(b) != null || a.distancePt(b.a()) < tolPt || b.distancePt(a.a()) < tolPt) {
                    return true;
                }
            }
        }
        return false;
    }
}
