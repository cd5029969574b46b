package linewalk.tests.quality;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** Whether a flow line is drawn where the print says that it runs: figures of lines are worth no more than that. */
final class Truthfulness {

    /** How far bars, beads and arrows may reach from the course; half of the widest is under 6. */
    private static final double BESIDE_PT = 8;
    /** The longest gap of a dashed line and the white where another crosses. */
    private static final double GAP_PT = 14;

    private Truthfulness() {}

    static List<Overlap> astray(PrintPage page) {
        List<Overlap> astray = new ArrayList<>();
        for (Thing.Line line : page.lines()) {
            List<Segment> course = Segment.of(line);
            List<List<Point2D>> ink = page.paints().stream()
                    .filter(p -> p.owner() == line && !p.isLight())
                    .map(Paint::points)
                    .toList();
            boolean strays = ink.stream().flatMap(List::stream).anyMatch(p -> course.stream()
                    .noneMatch(s -> s.distancePt(p) <= BESIDE_PT));
            if (strays || course.stream().anyMatch(s -> !isDrawn(s, ink))) {
                Point2D p = line.course().get(0);
                astray.add(new Overlap(
                        "line-astray",
                        page.number(),
                        new java.awt.geom.Rectangle2D.Double(p.getX(), p.getY(), 0, 0),
                        "line " + line.name() + " is not drawn where it is said to run"));
            }
        }
        return astray;
    }

    private static boolean isDrawn(Segment s, List<List<Point2D>> ink) {
        for (double t = 0; t <= 1; t += Math.min(1, 2 / s.lengthPt())) {
            double x = s.from().getX() + t * (s.to().getX() - s.from().getX());
            double y = s.from().getY() + t * (s.to().getY() - s.from().getY());
            if (ink.stream().noneMatch(path -> isNear(path, x, y))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isNear(List<Point2D> path, double x, double y) {
        for (int i = 1; i < path.size(); i++) {
            Point2D p = path.get(i - 1);
            Point2D q = path.get(i);
            if (Line2D.ptSegDist(p.getX(), p.getY(), q.getX(), q.getY(), x, y) < GAP_PT) {
                return true;
            }
        }
        return false;
    }
}
