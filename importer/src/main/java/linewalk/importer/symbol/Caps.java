package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/**
 * The cap over the ball of a test point: three sides, open towards the ball, perhaps with the pin that lifts it inside; or
 * an arch around the ball, in one stroke or more.
 */
final class Caps {

    /** The largest ball, in tolerances. */
    private static final double BALL_TOL = 10;

    /** Breadth of the cap in balls. */
    private static final double NARROWEST = 1.1;

    private static final double BROADEST = 2.6;

    /** From the ball's middle to the cap's closed side, in balls. */
    private static final double FARTHEST = 2.2;

    /** From the ball's middle to an arch, in balls. */
    private static final double LEAST_ARCH = 0.6;

    private static final double MOST_ARCH = 1.4;

    /** How much farther from the middle an arch's farthest point may be than its nearest. */
    private static final double ROUND = 1.3;

    private static final double LEAST_SPAN = Math.toRadians(120);

    private final Near<Stroke> near;
    private final double tolPt;

    /** @param free strokes that no figure has taken */
    Caps(List<Stroke> free, double tolPt) {
        near = new Near<>(free, Stroke::box);
        this.tolPt = tolPt;
    }

    /** The strokes of the cap over a figure, if it is a ball; nothing where it has none. */
    List<Stroke> over(Body b) {
        Optional<Outline> ball = b.outlines().stream()
                .filter(o -> o.circle() && o.box().equals(b.core()) && o.box().widthPt() < BALL_TOL * tolPt)
                .findFirst();
        if (ball.isEmpty()) {
            return List.of();
        }
        Box round = ball.get().box();
        for (Stroke s : near.touching(round.grow(FARTHEST * round.widthPt()))) {
            if (isOver(s, round)) {
                List<Stroke> found = new ArrayList<>();
                for (Stroke pin : near.touching(s.box())) {
                    if (s.box().union(round).grow(tolPt).contains(pin.box())) {
                        found.add(pin);
                    }
                }
                return found;
            }
        }
        List<Stroke> arch = near.touching(round.grow(MOST_ARCH * round.widthPt())).stream()
                .filter(s -> isAround(s, round))
                .toList();
        return spanRad(arch, round.center()) > LEAST_SPAN ? arch : List.of();
    }

    /** A bend whose points all have one distance from the ball's middle. */
    private static boolean isAround(Stroke s, Box ball) {
        if (s.closed() || !s.curved() || !s.dash().solid()) {
            return false;
        }
        DoubleSummaryStatistics far = s.points().stream()
                .mapToDouble(p -> p.distancePt(ball.center()) / ball.widthPt())
                .summaryStatistics();
        return far.getMin() > LEAST_ARCH && far.getMax() < MOST_ARCH && far.getMax() < ROUND * far.getMin();
    }

    /** How far strokes reach around a point, all together. */
    private static double spanRad(List<Stroke> arch, Point middle) {
        double span = 0;
        for (Stroke s : arch) {
            for (int i = 1; i < s.points().size(); i++) {
                Direction a = Direction.of(middle, s.points().get(i - 1));
                Direction b = Direction.of(middle, s.points().get(i));
                span += Math.acos(Math.max(-1, Math.min(1, a.along(b))));
            }
        }
        return span;
    }

    private static boolean isOver(Stroke s, Box ball) {
        List<Point> p = s.points();
        if (s.closed() || s.curved() || !s.dash().solid() || p.size() != 4) {
            return false;
        }
        Direction across = Direction.of(p.get(1), p.get(2));
        Direction one = Direction.of(p.get(1), p.get(0));
        Direction other = Direction.of(p.get(2), p.get(3));
        Point middle = new Point(
                (p.get(1).xPt() + p.get(2).xPt()) / 2,
                (p.get(1).yPt() + p.get(2).yPt()) / 2);
        double size = ball.widthPt();
        double broad = p.get(1).distancePt(p.get(2));
        double far = one.ahead(middle, ball.center());
        return Math.abs(one.along(across)) < 0.1
                && one.along(other) > 0.95
                && broad > NARROWEST * size
                && broad < BROADEST * size
                && far > size / 2
                && far < FARTHEST * size
                && one.aside(middle, ball.center()) < size / 4;
    }
}
