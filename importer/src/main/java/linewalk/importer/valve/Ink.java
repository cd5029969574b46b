package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * One drawn piece in the row's frame.
 *
 * @param filled painted inside
 * @param solid not dashed
 */
record Ink(List<Point> points, boolean closed, boolean curved, boolean filled, boolean solid) {

    /** A turn sharper than this is no bend of a passage: the pen goes back to draw a barb or a spring. */
    private static final double SHARP = -0.4;

    Ink {
        points = List.copyOf(points);
    }

    static Ink of(Stroke s, Lie lie) {
        return new Ink(
                s.points().stream().map(lie::local).toList(),
                s.closed(),
                s.curved(),
                s.filled(),
                s.dash().solid());
    }

    static Ink of(Fill f, Lie lie) {
        return new Ink(f.outline().stream().map(lie::local).toList(), true, f.curved(), true, true);
    }

    Point first() {
        return points.get(0);
    }

    Point last() {
        return points.get(points.size() - 1);
    }

    Box box() {
        return Box.around(points);
    }

    double sizePt() {
        return Math.max(box().widthPt(), box().heightPt());
    }

    List<Segment> segments() {
        List<Segment> out = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            out.add(new Segment(points.get(i - 1), points.get(i)));
        }
        if (closed && points.size() > 2) {
            out.add(new Segment(last(), first()));
        }
        return out;
    }

    double lengthPt() {
        return segments().stream().mapToDouble(Segment::lengthPt).sum();
    }

    double distancePt(Point p) {
        if (filled && covers(p)) {
            return 0;
        }
        return segments().stream().mapToDouble(s -> s.distancePt(p)).min().orElse(Double.MAX_VALUE);
    }

    /** Even-odd rule. */
    boolean covers(Point p) {
        boolean inside = false;
        for (Segment s : segments()) {
            Point a = s.a();
            Point b = s.b();
            if ((a.yPt() > p.yPt()) != (b.yPt() > p.yPt())
                    && p.xPt() < (b.xPt() - a.xPt()) * (p.yPt() - a.yPt()) / (b.yPt() - a.yPt()) + a.xPt()) {
                inside = !inside;
            }
        }
        return closed && inside;
    }

    /** All points equally far from the middle. */
    boolean round() {
        Box b = box();
        if (!closed || points.size() < 6 || Math.abs(b.widthPt() - b.heightPt()) > 0.15 * b.widthPt()) {
            return false;
        }
        double r = b.widthPt() / 2;
        return points.stream().allMatch(p -> Math.abs(p.distancePt(b.center()) - r) < 0.15 * r);
    }

    /** From an end into the piece. */
    Direction inward(boolean atFirst) {
        int n = points.size();
        return atFirst
                ? Direction.of(points.get(0), points.get(1))
                : Direction.of(points.get(n - 1), points.get(n - 2));
    }

    Ink with(List<Point> other) {
        return new Ink(other, false, curved, filled, solid);
    }

    /** Cut where the pen turns back. */
    List<Ink> split() {
        if (closed || curved || points.size() < 3) {
            return List.of(this);
        }
        List<Ink> out = new ArrayList<>();
        int from = 0;
        for (int i = 1; i + 1 < points.size(); i++) {
            Direction in = Direction.of(points.get(i - 1), points.get(i));
            if (in.along(Direction.of(points.get(i), points.get(i + 1))) < SHARP) {
                out.add(with(points.subList(from, i + 1)));
                from = i;
            }
        }
        out.add(with(points.subList(from, points.size())));
        return out;
    }

    /** A spring: goes to and fro at least this often, without level stretches (those are detent notches). */
    boolean zigzag(double amplitudePt) {
        return !closed
                && (reversals(true, amplitudePt) >= 3 || reversals(false, amplitudePt) >= 3)
                && levelShare() < 0.3;
    }

    /** A row of notches. */
    boolean notched(double amplitudePt) {
        return reversals(true, amplitudePt) >= 3 && levelShare() >= 0.3;
    }

    private double levelShare() {
        double level = segments().stream()
                .filter(s -> s.horizontal() || s.vertical())
                .mapToDouble(Segment::lengthPt)
                .sum();
        return level / lengthPt();
    }

    private int reversals(boolean across, double amplitudePt) {
        int count = 0;
        int way = 0;
        double turn = across ? first().yPt() : first().xPt();
        for (Point p : points) {
            double v = across ? p.yPt() : p.xPt();
            if (way == 0 ? Math.abs(v - turn) > amplitudePt : (turn - v) * way > amplitudePt) {
                count += way == 0 ? 0 : 1;
                way = v > turn ? 1 : -1;
                turn = v;
            } else if ((v - turn) * way > 0) {
                turn = v;
            }
        }
        return count;
    }
}
