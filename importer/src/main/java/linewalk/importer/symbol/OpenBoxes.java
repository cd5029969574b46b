package linewalk.importer.symbol;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * Boxes of which three sides are drawn: on the side of a figure of the same pen, a solenoid or the pilot stage of a valve;
 * around the plunger that leaves through the open side, the barrel of a ram; up to a ball, half of a valve.
 */
final class OpenBoxes {

    /** How much longer than the open side its figure is at most; frames of units are longer. */
    private static final double FIGURE = 6;

    private static final double ONE_PEN = 1.1;

    /** How thick a plunger is at least, in bores of its barrel. */
    private static final double PLUNGER = 0.3;

    /** Sine of the angle at the tip of half a valve. */
    private static final double LEAST_TIP = 0.3;

    private final Near<Stroke> figures;
    private final Near<Outline> balls;
    private final double tolPt;

    private OpenBoxes(List<Stroke> strokes, double tolPt) {
        this.figures = new Near<>(
                strokes.stream().filter(s -> s.closed() && !s.curved()).toList(), Stroke::box);
        this.balls = new Near<>(
                strokes.stream()
                        .filter(s -> s.closed() && s.curved())
                        .map(Outline::of)
                        .filter(Outline::circle)
                        .toList(),
                Outline::box);
        this.tolPt = tolPt;
    }

    /** The strokes with such boxes closed. */
    static List<Stroke> close(List<Stroke> strokes, double tolPt) {
        OpenBoxes boxes = new OpenBoxes(strokes, tolPt);
        return strokes.stream()
                .map(s -> boxes.isOpen(s) || boxes.isBarrel(s)
                        ? closed(s)
                        : boxes.onBall(s).orElse(s))
                .toList();
    }

    /** Half of a valve of which a ball hides the tip: the triangle up to there. */
    private Optional<Stroke> onBall(Stroke s) {
        if (s.closed() || s.curved() || !s.dash().solid() || s.points().size() != 4) {
            return Optional.empty();
        }
        Point a = s.points().get(1);
        Point b = s.points().get(2);
        Direction from = Direction.of(a, s.first());
        Direction to = Direction.of(b, s.last());
        double cross = from.dx() * to.dy() - from.dy() * to.dx();
        if (Math.abs(cross) < LEAST_TIP) {
            return Optional.empty();
        }
        double along = ((b.xPt() - a.xPt()) * to.dy() - (b.yPt() - a.yPt()) * to.dx()) / cross;
        Point tip = a.plus(along * from.dx(), along * from.dy());
        boolean hidden = along > a.distancePt(s.first())
                && balls.within(tip, tolPt).stream()
                        .anyMatch(o -> o.covers(tip)
                                && o.edgeDistancePt(s.first()) <= tolPt
                                && o.edgeDistancePt(s.last()) <= tolPt);
        return hidden
                ? Optional.of(new Stroke(List.of(tip, a, b), true, false, s.widthPt(), s.dash(), s.filled()))
                : Optional.empty();
    }

    /** Without what is drawn of the open side. */
    private static Stroke closed(Stroke s) {
        List<Point> corners =
                s.points().subList(s.points().size() / 2 - 2, s.points().size() / 2 + 2);
        return new Stroke(corners, true, false, s.widthPt(), s.dash(), s.filled());
    }

    /** Three sides, the open one perhaps begun from both ends, and a box of its own through what is left of it. */
    private boolean isBarrel(Stroke s) {
        int n = s.points().size();
        boolean sides = !s.closed() && !s.curved() && s.dash().solid() && (n == 4 || n == 6);
        if (!sides || !IntStream.range(1, n - 1).allMatch(i -> square(s, i))) {
            return false;
        }
        Segment open = new Segment(s.first(), s.last());
        Box barrel = s.box();
        boolean atEnd =
                !barrel.grow(-tolPt).contains(s.first()) && !barrel.grow(-tolPt).contains(s.last());
        return atEnd && figures.touching(barrel).stream().anyMatch(f -> isPlunger(f, barrel, open));
    }

    private boolean isPlunger(Stroke figure, Box barrel, Segment open) {
        Box b = figure.box();
        boolean upright = open.horizontal();
        double bore = upright ? barrel.widthPt() : barrel.heightPt();
        double across = upright ? b.widthPt() : b.heightPt();
        double aside = upright
                ? b.center().xPt() - barrel.center().xPt()
                : b.center().yPt() - barrel.center().yPt();
        double at = upright ? open.a().yPt() : open.a().xPt();
        double inside = upright ? barrel.center().yPt() : barrel.center().xPt();
        double from = upright ? b.y0Pt() : b.x0Pt();
        double to = upright ? b.y1Pt() : b.x1Pt();
        double in = at > inside ? at - from : to - at;
        double out = at > inside ? to - at : at - from;
        double depth = upright ? barrel.heightPt() : barrel.widthPt();
        return figure.points().size() == 4
                && (upright || open.vertical())
                && Math.abs(aside) < tolPt
                && across > PLUNGER * bore
                && across < open.lengthPt() + tolPt
                && across < bore - tolPt
                && in > tolPt
                && in < depth - tolPt
                && out > tolPt;
    }

    private boolean isOpen(Stroke s) {
        boolean threeSides =
                !s.closed() && !s.curved() && s.dash().solid() && s.points().size() == 4;
        return threeSides
                && square(s, 1)
                && square(s, 2)
                && figures.touching(s.box().grow(tolPt)).stream().anyMatch(f -> standsOn(s, f));
    }

    private static boolean square(Stroke s, int corner) {
        Direction in = Direction.of(s.points().get(corner - 1), s.points().get(corner));
        Direction out = Direction.of(s.points().get(corner), s.points().get(corner + 1));
        return Math.abs(in.along(out)) < 0.05;
    }

    private boolean standsOn(Stroke s, Stroke figure) {
        double open = s.first().distancePt(s.last());
        double size = Math.max(figure.box().widthPt(), figure.box().heightPt());
        boolean onePen = Math.max(s.widthPt(), figure.widthPt()) <= ONE_PEN * Math.min(s.widthPt(), figure.widthPt());
        if (!onePen || size > FIGURE * open || s.first().distancePt(s.points().get(1)) > size) {
            return false;
        }
        List<Point> corners = figure.points();
        for (int i = 0; i < corners.size(); i++) {
            Segment side = new Segment(corners.get(i), corners.get((i + 1) % corners.size()));
            if (side.distancePt(s.first()) < tolPt && side.distancePt(s.last()) < tolPt) {
                return true;
            }
        }
        return false;
    }
}
