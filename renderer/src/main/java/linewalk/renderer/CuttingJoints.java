package linewalk.renderer;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Line;
import linewalk.drawing.Point;

/**
 * Where lines of a cutting are joined, and where they only cross: bands over the original hide its dots. Joined ones get a
 * dot again; of two that cross, the one drawn later interrupts the other.
 */
final class CuttingJoints {

    /** How far a run's end may lie beside the run that it joins. */
    private static final double ON_PT = 1.5;

    /** Ends that touch are no crossing. */
    private static final double TOUCH_PT = 2;

    private static final double STRAIGHT_PT = 0.3;

    private record Drawn(Line line, Line2D stretch) {}

    private final List<Drawn> drawn = new ArrayList<>();

    /** Places of the sheet at which three ways or more of one line meet. */
    static Set<Point> of(Stay stay) {
        Map<Line, List<List<Point>>> runs = new LinkedHashMap<>();
        stay.courses()
                .forEach((leg, course) -> runs.computeIfAbsent(stay.lines().get(leg), k -> new ArrayList<>())
                        .add(course));
        Set<Point> joints = new LinkedHashSet<>();
        for (List<List<Point>> line : runs.values()) {
            for (List<Point> run : line) {
                for (Point end : List.of(run.get(0), run.get(run.size() - 1))) {
                    int ways = line.stream().mapToInt(r -> ways(r, end)).sum();
                    if (ways > 2 && joints.stream().noneMatch(j -> j.distancePt(end) < ON_PT)) {
                        joints.add(end);
                    }
                }
            }
        }
        return joints;
    }

    /** How many ways lead on from a place along a run: none, one at its ends, two on it. */
    private static int ways(List<Point> run, Point at) {
        Point first = run.get(0);
        Point last = run.get(run.size() - 1);
        if (first.distancePt(at) < ON_PT || last.distancePt(at) < ON_PT) {
            return 1;
        }
        for (int i = 1; i < run.size(); i++) {
            Point a = run.get(i - 1);
            Point b = run.get(i);
            if (Line2D.ptSegDist(a.xPt(), a.yPt(), b.xPt(), b.yPt(), at.xPt(), at.yPt()) < ON_PT) {
                return 2;
            }
        }
        return 0;
    }

    /**
     * The gaps in what was drawn before that a line makes which is drawn now.
     *
     * @param alongPt how far they reach along it, over the other's marks
     * @param acrossPt its own breadth with paper on both sides
     */
    List<Path2D> cut(Line line, List<Point2D> points, double alongPt, double acrossPt) {
        List<Path2D> gaps = new ArrayList<>();
        List<Drawn> now = new ArrayList<>();
        for (Line2D stretch : stretches(points)) {
            now.add(new Drawn(line, stretch));
            for (Drawn other : drawn) {
                Point2D at = other.line.equals(line) ? null : crossing(stretch, other.stretch);
                if (at != null) {
                    gaps.add(field(stretch, at, alongPt / 2, acrossPt / 2));
                }
            }
        }
        drawn.addAll(now);
        return gaps;
    }

    /** From bend to bend. */
    private static List<Line2D> stretches(List<Point2D> points) {
        List<Line2D> all = new ArrayList<>();
        Point2D from = points.get(0);
        for (int i = 1; i < points.size(); i++) {
            boolean bends = i == points.size() - 1
                    || Line2D.ptLineDist(
                                    from.getX(),
                                    from.getY(),
                                    points.get(i + 1).getX(),
                                    points.get(i + 1).getY(),
                                    points.get(i).getX(),
                                    points.get(i).getY())
                            > STRAIGHT_PT;
            if (bends) {
                all.add(new Line2D.Double(from, points.get(i)));
                from = points.get(i);
            }
        }
        return all;
    }

    /** Null where they do not cross between their ends. */
    private static Point2D crossing(Line2D a, Line2D b) {
        double ax = a.getX2() - a.getX1();
        double ay = a.getY2() - a.getY1();
        double bx = b.getX2() - b.getX1();
        double by = b.getY2() - b.getY1();
        double cross = ax * by - ay * bx;
        if (Math.abs(cross) < 1e-9) {
            return null;
        }
        double t = ((b.getX1() - a.getX1()) * by - (b.getY1() - a.getY1()) * bx) / cross;
        Point2D at = new Point2D.Double(a.getX1() + t * ax, a.getY1() + t * ay);
        return isBetween(a, at) && isBetween(b, at) ? at : null;
    }

    private static boolean isBetween(Line2D l, Point2D at) {
        return l.ptSegDist(at) < 1e-6
                && Math.min(l.getP1().distance(at), l.getP2().distance(at)) > TOUCH_PT;
    }

    private static Path2D field(Line2D along, Point2D at, double alongPt, double acrossPt) {
        double length = along.getP1().distance(along.getP2());
        double dx = (along.getX2() - along.getX1()) / length;
        double dy = (along.getY2() - along.getY1()) / length;
        Path2D field = new Path2D.Double();
        field.moveTo(at.getX() - alongPt * dx - acrossPt * dy, at.getY() - alongPt * dy + acrossPt * dx);
        field.lineTo(at.getX() + alongPt * dx - acrossPt * dy, at.getY() + alongPt * dy + acrossPt * dx);
        field.lineTo(at.getX() + alongPt * dx + acrossPt * dy, at.getY() + alongPt * dy - acrossPt * dx);
        field.lineTo(at.getX() - alongPt * dx + acrossPt * dy, at.getY() - alongPt * dy - acrossPt * dx);
        field.closePath();
        return field;
    }
}
