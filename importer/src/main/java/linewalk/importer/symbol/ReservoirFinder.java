package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Point;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * Reservoirs are open at the top (ISO 1219-1): a level bottom and two sides whose upper ends touch nothing, as one stroke
 * or three.
 */
final class ReservoirFinder {

    private final List<Stroke> strokes;
    private final StrokeTouch touch;
    private final double tolPt;

    ReservoirFinder(List<Stroke> strokes, StrokeTouch touch, double tolPt) {
        this.strokes = strokes;
        this.touch = touch;
        this.tolPt = tolPt;
    }

    List<Body> find() {
        List<Body> found = new ArrayList<>();
        for (Stroke s : strokes) {
            if (s.points().size() == 4 && !s.closed() && isOpenBox(s)) {
                Body b = new Body(true);
                b.add(s);
                found.add(b);
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
                && new Segment(a, b).vertical()
                && new Segment(b, c).horizontal()
                && new Segment(c, d).vertical()
                && a.yPt() < b.yPt()
                && d.yPt() < c.yPt()
                && Math.abs(b.xPt() - c.xPt()) > 4 * tolPt
                && touch.ofEnds(s).isEmpty();
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
                .filter(s -> new Segment(s.first(), s.last()).vertical())
                .filter(s -> lower(s).distancePt(corner) <= tolPt)
                .filter(s -> touch.at(upper(s), s).isEmpty())
                .findFirst();
    }

    private static Point lower(Stroke s) {
        return s.first().yPt() > s.last().yPt() ? s.first() : s.last();
    }

    private static Point upper(Stroke s) {
        return s.first().yPt() > s.last().yPt() ? s.last() : s.first();
    }
}
