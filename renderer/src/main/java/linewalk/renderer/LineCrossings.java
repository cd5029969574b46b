package linewalk.renderer;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Net;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/**
 * Where lines of a page cross that are not joined: the one drawn later interrupts the other, so that nobody turns off
 * there. Lines are drawn in such an order that short stretches stay whole: a port's line cut off close to its dot reads as
 * a port without one.
 */
final class LineCrossings {

    private static final double GAP_PT = 2.6;
    /** Ends that touch are no crossing. */
    private static final double TOUCH_PT = 1;

    /** @param wayX direction of the course that stays whole, with {@code wayY} of length 1 */
    private record Crossing(Layout.Course under, Layout.Course over, Point2D at, double wayX, double wayY) {}

    /**
     * @param level the one course is level there, and the other upright
     * @param stubOfOnePt from the crossing to the nearer end of the straight stretch
     */
    private record Meeting(
            Layout.Course one,
            Layout.Course other,
            Point2D at,
            boolean level,
            double stubOfOnePt,
            double stubOfOtherPt) {}

    private final List<Crossing> all = new ArrayList<>();
    private final List<Layout.Course> order;
    private final ToDoubleFunction<Layout.Course> widths;
    private final ToDoubleFunction<Layout.Course> breadths;

    /**
     * @param widths of lines where they carry no marks
     * @param breadths of lines with their marks
     */
    LineCrossings(Layout layout, ToDoubleFunction<Layout.Course> widths, ToDoubleFunction<Layout.Course> breadths) {
        this.widths = widths;
        this.breadths = breadths;
        List<Layout.Course> courses = layout.courses();
        List<Rectangle2D> fields = courses.stream().map(LineCrossings::field).toList();
        List<Meeting> meetings = new ArrayList<>();
        for (int i = 1; i < courses.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (courses.get(i).net() != courses.get(k).net()
                        && fields.get(i).intersects(fields.get(k))) {
                    meet(courses.get(k), courses.get(i), meetings);
                }
            }
        }
        // lines of one net lie on one another: all of them come before another net's, or behind
        Map<Net, Double> shortest = new IdentityHashMap<>();
        meetings.forEach(m -> {
            shortest.merge(m.one.net(), m.stubOfOnePt, Math::min);
            shortest.merge(m.other.net(), m.stubOfOtherPt, Math::min);
        });
        Map<Net, Integer> firsts = new IdentityHashMap<>();
        courses.forEach(c -> firsts.putIfAbsent(c.net(), firsts.size()));
        order = courses.stream()
                .sorted(Comparator.<Layout.Course>comparingDouble(
                                c -> -shortest.getOrDefault(c.net(), Double.MAX_VALUE))
                        .thenComparingInt(c -> firsts.get(c.net())))
                .toList();
        Map<Layout.Course, Integer> ranks = new IdentityHashMap<>();
        order.forEach(c -> ranks.put(c, ranks.size()));
        meetings.forEach(m -> all.add(
                ranks.get(m.one) < ranks.get(m.other)
                        ? new Crossing(m.one, m.other, m.at, m.level ? 0 : 1, m.level ? 1 : 0)
                        : new Crossing(m.other, m.one, m.at, m.level ? 1 : 0, m.level ? 0 : 1)));
    }

    /** All lines of the page, as they are to be drawn one after the other. */
    List<Layout.Course> order() {
        return order;
    }

    private static Rectangle2D field(Layout.Course course) {
        Rectangle2D field = new Rectangle2D.Double(
                course.points().get(0).getX(), course.points().get(0).getY(), TOUCH_PT, TOUCH_PT);
        course.points().forEach(field::add);
        return field;
    }

    private static void meet(Layout.Course one, Layout.Course other, List<Meeting> meetings) {
        for (int i = 1; i < one.points().size(); i++) {
            Point2D a = one.points().get(i - 1);
            Point2D b = one.points().get(i);
            for (int k = 1; k < other.points().size(); k++) {
                Point2D p = other.points().get(k - 1);
                Point2D q = other.points().get(k);
                if (!Line2D.linesIntersect(
                        a.getX(), a.getY(), b.getX(), b.getY(), p.getX(), p.getY(), q.getX(), q.getY())) {
                    continue;
                }
                boolean level = Math.abs(a.getY() - b.getY()) < Math.abs(a.getX() - b.getX());
                Point2D at = level ? new Point2D.Double(p.getX(), a.getY()) : new Point2D.Double(a.getX(), p.getY());
                double stubOfOne = Math.min(at.distance(a), at.distance(b));
                double stubOfOther = Math.min(at.distance(p), at.distance(q));
                if (stubOfOne > TOUCH_PT && stubOfOther > TOUCH_PT) {
                    meetings.add(new Meeting(one, other, at, level, stubOfOne, stubOfOther));
                }
            }
        }
    }

    /** Wipes what the course interrupts; to be done before the course is drawn. */
    void open(Canvas c, Layout.Course course) {
        for (Crossing x : all) {
            if (x.over == course) {
                double reach = breadths.applyAsDouble(x.under) / 2 + 0.5;
                c.pen(Color.WHITE, Ink.line(widths.applyAsDouble(course) + 2 * GAP_PT));
                c.line(
                        x.at.getX() - reach * x.wayX,
                        x.at.getY() - reach * x.wayY,
                        x.at.getX() + reach * x.wayX,
                        x.at.getY() + reach * x.wayY);
            }
        }
    }

    /** Whether a mark of a line's pattern stands clear of all crossings. */
    boolean isFree(Point2D p, double breadthPt) {
        return all.stream()
                .allMatch(x -> x.at.distance(p)
                        > (breadthPt + Math.max(breadths.applyAsDouble(x.under), breadths.applyAsDouble(x.over))) / 2
                                + GAP_PT);
    }
}
