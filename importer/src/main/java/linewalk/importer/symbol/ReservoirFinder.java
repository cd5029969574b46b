package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * Reservoirs are open at the top (ISO 1219-1): a level bottom and two sides whose upper ends touch nothing, as one stroke
 * or more. A closed box is one where its name stands in it and lines end inside.
 */
final class ReservoirFinder {

    private static final double LEAN = 0.7;

    /** How deep a line ends inside one at least, in its heights. */
    private static final double INSIDE = 0.1;

    private final List<Stroke> strokes;
    private final List<Box> names;
    private final List<Outline> flags;
    private final StrokeTouch touch;
    private final double tolPt;

    /** @param names words that only a reservoir holds */
    ReservoirFinder(List<Stroke> strokes, List<Box> names, List<Outline> flags, StrokeTouch touch, double tolPt) {
        this.strokes = strokes;
        this.names = names;
        this.flags = flags;
        this.touch = touch;
        this.tolPt = tolPt;
    }

    static boolean isClosed(Outline o, List<Label> labels, List<Stroke> strokes) {
        Box b = o.box();
        return o.rectangle()
                && o.stroke().dash().solid()
                && labels.stream().anyMatch(l -> b.contains(l.box()) && Designations.isReservoir(l.text()))
                && strokes.stream()
                        .anyMatch(s -> !s.closed() && b.contains(s.first()) != b.contains(s.last()) && runsIn(s, b));
    }

    private static boolean runsIn(Stroke s, Box b) {
        Point end = b.contains(s.first()) ? s.first() : s.last();
        return b.grow(-INSIDE * b.heightPt()).contains(end);
    }

    static Body closed(Outline o) {
        Body b = new Body(true);
        b.add(o.stroke());
        return b;
    }

    List<Body> find() {
        List<Body> found = new ArrayList<>(shaped());
        found.removeIf(b -> strokes.stream().noneMatch(s -> endsIn(s, b)));
        return found;
    }

    /** A reservoir is drawn because a pipe ends in it; a line that goes down, across and up again holds nothing. */
    private boolean endsIn(Stroke s, Body b) {
        if (b.marks().contains(s)) {
            return false;
        }
        if (b.box().contains(s.first()) == b.box().contains(s.last())) {
            return false;
        }
        boolean firstIsIn = b.box().contains(s.first());
        Point end = firstIsIn ? s.first() : s.last();
        Point from = firstIsIn ? s.last() : s.first();
        // a pipe may end level with the rim, but not a line that comes up from below, nor the arm of an arrow head
        double rim = Math.max(2 * tolPt, INSIDE * b.box().heightPt());
        boolean atRim = end.yPt() < b.box().y0Pt() + rim;
        if (atRim && (from.yPt() > b.box().y1Pt() || s.lengthPt() < 2 * rim)) {
            return false;
        }
        boolean goesThrough = b.box().y1Pt() - end.yPt() <= 2 * tolPt
                && touch.at(end, s).stream().anyMatch(o -> !b.marks().contains(o));
        return !goesThrough;
    }

    private List<Body> shaped() {
        List<Body> found = new ArrayList<>();
        for (Stroke s : strokes) {
            if (s.points().size() == 4 && !s.closed() && isOpenBox(s)) {
                Body b = new Body(true);
                b.add(s);
                found.add(b);
            } else if (s.points().size() == 3 && !s.closed()) {
                ofTwo(s).ifPresent(found::add);
            } else if (s.points().size() == 2) {
                ofThree(s).ifPresent(found::add);
            }
        }
        return found;
    }

    private boolean isOpenBox(Stroke s) {
        Point a = s.points().get(0);
        Point b = s.points().get(1);
        Point c = s.points().get(2);
        Point d = s.points().get(3);
        return s.dash().solid()
                && steep(a, b)
                && new Segment(b, c).horizontal()
                && steep(c, d)
                && a.yPt() < b.yPt()
                && d.yPt() < c.yPt()
                && Math.abs(b.xPt() - c.xPt()) > 4 * tolPt
                && free(s.first(), s)
                && free(s.last(), s);
    }

    /** Upright, or leaning as the side of a tray. */
    private static boolean steep(Point a, Point b) {
        return Math.abs(a.xPt() - b.xPt()) < LEAN * Math.abs(a.yPt() - b.yPt());
    }

    /** No stroke and no flag is there. */
    private boolean free(Point end, Stroke s) {
        return touch.at(end, s).isEmpty()
                && flags.stream().noneMatch(f -> f.box().distancePt(end) <= 2 * tolPt);
    }

    /** A bottom drawn with one of its sides, and the other side; lines meet so as well, but hold no name. */
    private Optional<Body> ofTwo(Stroke s) {
        Point corner = s.points().get(1);
        boolean sideFirst = steep(s.first(), corner);
        Point top = sideFirst ? s.first() : s.last();
        Point end = sideFirst ? s.last() : s.first();
        boolean isLeg = s.dash().solid()
                && steep(top, corner)
                && top.yPt() < corner.yPt()
                && new Segment(corner, end).horizontal()
                && free(top, s);
        return (isLeg ? side(s, end) : Optional.<Stroke>empty())
                .map(side -> {
                    Body b = new Body(true);
                    b.add(s);
                    b.add(side);
                    return b;
                })
                .filter(b -> names.stream().anyMatch(n -> b.box().contains(n)));
    }

    private Optional<Body> ofThree(Stroke bottom) {
        if (!new Segment(bottom.first(), bottom.last()).horizontal()
                || !bottom.dash().solid()) {
            return Optional.empty();
        }
        Optional<Stroke> left = side(bottom, bottom.first());
        Optional<Stroke> right = side(bottom, bottom.last());
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        Body b = new Body(true);
        b.add(bottom);
        b.add(left.get());
        b.add(right.get());
        return Optional.of(b);
    }

    private Optional<Stroke> side(Stroke bottom, Point corner) {
        return touch.at(corner, bottom).stream()
                .filter(s -> s.points().size() == 2 && s.dash().solid())
                .filter(s -> steep(s.first(), s.last()))
                .filter(s -> lower(s).distancePt(corner) <= tolPt)
                .filter(s -> free(upper(s), s))
                .findFirst();
    }

    private static Point lower(Stroke s) {
        return s.first().yPt() > s.last().yPt() ? s.first() : s.last();
    }

    private static Point upper(Stroke s) {
        return s.first().yPt() > s.last().yPt() ? s.last() : s.first();
    }
}
