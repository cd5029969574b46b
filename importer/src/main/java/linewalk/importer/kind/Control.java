package linewalk.importer.kind;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/**
 * A square with one arrow: a spool that a spring holds and a pilot moves.
 *
 * @param offset how far the arrow stands from the middle, in sides: closed at rest where it stands aside
 * @param spring pushes on a side
 * @param pilots where the pilot lines that come to a side start
 */
record Control(Shape square, Direction arrow, double offset, boolean spring, Set<PilotFrom> pilots) {

    /** Where oil for the pilot comes from. */
    enum PilotFrom {
        INLET,
        OUTLET,
        OUTSIDE
    }

    /** The one end of the arrow that a pilot comes from; empty where none or both do. */
    Optional<PilotFrom> own() {
        boolean in = pilots.contains(PilotFrom.INLET);
        boolean out = pilots.contains(PilotFrom.OUTLET);
        return in == out ? Optional.empty() : Optional.of(in ? PilotFrom.INLET : PilotFrom.OUTLET);
    }

    /** By a spring or a pilot. */
    boolean held() {
        return spring || !pilots.isEmpty();
    }

    boolean outside() {
        return pilots.contains(PilotFrom.OUTSIDE);
    }

    /** @param checks whose seats, with the line behind their balls, look like arrows */
    static Optional<Control> of(Shape square, Picture p, List<Check> checks) {
        Arrow best = null;
        for (Arrow a : p.arrows()) {
            boolean seat = checks.stream().anyMatch(c -> c.seat().distancePt(a.tip()) < p.tolPt());
            if (!seat && along(a, square) && (best == null || a.lengthPt() > best.lengthPt())) {
                best = a;
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        Direction way = best.direction();
        double side = square.sizePt();
        double offset = way.aside(best.tip(), square.center()) / side;
        boolean spring = p.springs().stream().anyMatch(s -> pushes(s, square, way, p.tolPt()));
        return Optional.of(new Control(square, way, offset, spring, new PilotWay(p, square, way).from()));
    }

    /** Straight across the square, its tip not beyond the side. */
    private static boolean along(Arrow a, Shape square) {
        Direction side = Direction.of(square.corners().get(0), square.corners().get(1));
        double turn = Math.abs(a.direction().along(side));
        boolean straight = turn > 0.98 || turn < 0.15;
        double half = square.sizePt() / 2;
        double tip = a.direction().ahead(square.center(), a.tip());
        double tail = a.direction().ahead(square.center(), a.tail());
        return straight
                && a.direction().aside(a.tip(), square.center()) < 0.9 * half
                && tip > -0.1 * half
                && tip < 1.1 * half
                && tail < 0.1 * half
                && a.headPt() < 1.2 * half;
    }

    /** Stands on a side beside the arrow, or within the square. */
    private static boolean pushes(Spring s, Shape square, Direction way, double tolPt) {
        double reach = 0.12 * square.sizePt() + tolPt;
        return s.box().distancePt(square.box()) < reach
                && Math.abs(way.ahead(square.center(), s.middle())) < 0.62 * square.sizePt()
                && Math.abs(s.axis().along(way)) < 0.8;
    }

    Segment line() {
        Point c = square.center();
        double h = square.sizePt() / 2;
        return new Segment(c.plus(-h * arrow.dx(), -h * arrow.dy()), c.plus(h * arrow.dx(), h * arrow.dy()));
    }
}
