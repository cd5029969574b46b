package linewalk.renderer;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** Where lines of a page cross that are not joined: the one drawn later interrupts the other, so that nobody turns off there. */
final class LineCrossings {

    private static final double GAP_PT = 2.6;
    /** Ends that touch are no crossing. */
    private static final double TOUCH_PT = 1;

    private record Crossing(Layout.Course under, Layout.Course over, Point2D at, Point2D way) {}

    private final List<Crossing> all = new ArrayList<>();
    private final ToDoubleFunction<Layout.Course> breadths;

    /** @param breadths of lines with their patterns */
    LineCrossings(Layout layout, ToDoubleFunction<Layout.Course> breadths) {
        this.breadths = breadths;
        List<Layout.Course> courses = layout.courses();
        List<Rectangle2D> fields = courses.stream().map(LineCrossings::field).toList();
        for (int over = 1; over < courses.size(); over++) {
            for (int under = 0; under < over; under++) {
                if (courses.get(over).net() != courses.get(under).net()
                        && fields.get(over).intersects(fields.get(under))) {
                    cross(courses.get(under), courses.get(over));
                }
            }
        }
    }

    private static Rectangle2D field(Layout.Course course) {
        Rectangle2D field = new Rectangle2D.Double(
                course.points().get(0).getX(), course.points().get(0).getY(), TOUCH_PT, TOUCH_PT);
        course.points().forEach(field::add);
        return field;
    }

    private void cross(Layout.Course under, Layout.Course over) {
        for (int i = 1; i < over.points().size(); i++) {
            Point2D a = over.points().get(i - 1);
            Point2D b = over.points().get(i);
            for (int k = 1; k < under.points().size(); k++) {
                Point2D p = under.points().get(k - 1);
                Point2D q = under.points().get(k);
                if (!Line2D.linesIntersect(
                        a.getX(), a.getY(), b.getX(), b.getY(), p.getX(), p.getY(), q.getX(), q.getY())) {
                    continue;
                }
                boolean level = Math.abs(a.getY() - b.getY()) < Math.abs(a.getX() - b.getX());
                Point2D at = level ? new Point2D.Double(p.getX(), a.getY()) : new Point2D.Double(a.getX(), p.getY());
                if (clear(at, a, b) && clear(at, p, q)) {
                    all.add(new Crossing(under, over, at, new Point2D.Double(level ? 1 : 0, level ? 0 : 1)));
                }
            }
        }
    }

    private static boolean clear(Point2D at, Point2D a, Point2D b) {
        return at.distance(a) > TOUCH_PT && at.distance(b) > TOUCH_PT;
    }

    /** Wipes what the course interrupts; to be done before the course is drawn. */
    void open(Canvas c, Layout.Course course) {
        for (Crossing x : all) {
            if (x.over == course) {
                double reach = breadths.applyAsDouble(x.under) / 2 + 0.5;
                c.pen(Color.WHITE, Ink.line(breadths.applyAsDouble(course) + 2 * GAP_PT));
                c.line(
                        x.at.getX() - reach * x.way.getX(),
                        x.at.getY() - reach * x.way.getY(),
                        x.at.getX() + reach * x.way.getX(),
                        x.at.getY() + reach * x.way.getY());
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
