package linewalk.importer.symbol;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/**
 * The cap over the ball of a test point: three sides, open towards the ball, perhaps with the pin that lifts it inside, or
 * open away from it, as the socket for a gauge; or an arch around the ball. In one stroke or more.
 */
final class Caps {

    /** The largest ball, in tolerances. */
    private static final double BALL_TOL = 14;

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
            List<Point> sides = sides(s);
            if (isOver(sides, round)) {
                Box cap = Box.around(sides);
                return near.touching(cap).stream()
                        .filter(pin -> cap.union(round).grow(tolPt).contains(pin.box()))
                        .toList();
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

    /** The corners of a stroke of three sides, or of a straight one with two that stand on its ends; else none. */
    private List<Point> sides(Stroke s) {
        if (s.closed() || s.curved() || !s.dash().solid()) {
            return List.of();
        } else if (s.points().size() == 4) {
            return s.points();
        }
        Optional<Point> one = s.points().size() == 2 ? side(s, s.first()) : Optional.empty();
        Optional<Point> other = s.points().size() == 2 ? side(s, s.last()) : Optional.empty();
        return one.isPresent() && other.isPresent() ? List.of(one.get(), s.first(), s.last(), other.get()) : List.of();
    }

    /** The far end of what stands upright on a corner. */
    private Optional<Point> side(Stroke base, Point corner) {
        Direction across = Direction.of(base.first(), base.last());
        return near.within(corner, tolPt).stream()
                .filter(s -> s != base && s.points().size() == 2 && s.dash().solid())
                .filter(s -> Math.abs(Direction.of(s.first(), s.last()).along(across)) < 0.1)
                .filter(s -> Math.min(s.first().distancePt(corner), s.last().distancePt(corner)) <= tolPt)
                .map(s -> s.first().distancePt(corner) <= tolPt ? s.last() : s.first())
                .findFirst();
    }

    private static boolean isOver(List<Point> p, Box ball) {
        if (p.isEmpty()) {
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
        double far = Math.abs(one.ahead(middle, ball.center()));
        return Math.abs(one.along(across)) < 0.1
                && one.along(other) > 0.95
                && broad > NARROWEST * size
                && broad < BROADEST * size
                && far > size / 2
                && far < FARTHEST * size
                && p.get(0).distancePt(p.get(1)) < broad
                && one.aside(middle, ball.center()) < size / 4;
    }
}
