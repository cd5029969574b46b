package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * A frame around a symbol whose ports are more, or others, than the symbol has places for. Lines end at the frame, but for
 * two that the passages join: which of the others leads where inside is not told, so nothing is drawn that would tell it.
 */
final class Housing {

    private static final double ROOM = 1;
    /** Letters of level lines stand above them. */
    private static final double LEVEL_PITCH = 2;

    private Housing() {}

    /** In a chain line, the frame of a unit. */
    static Plan around(Body body, Drafting d) {
        return around(body, p -> {}, new Axis(null, null), d);
    }

    /** The two ports that oil runs between are joined to the symbol, whose axis is x. */
    static Plan along(Body body, double x, Axis axis, Drafting d) {
        Plan p = around(body, q -> {}, axis, d);
        double axisX = (p.body().width() - body.width()) / 2 + x;
        double room = (p.body().height() - body.height()) / 2;
        double bottom = p.body().height();
        Art inner = pen -> {
            double upper = at(p, axis.upper());
            pen.lines(upper, 0, upper, room / 2, axisX, room / 2, axisX, room);
            double lower = at(p, axis.lower());
            pen.lines(lower, bottom, lower, bottom - room / 2, axisX, bottom - room / 2, axisX, bottom - room);
        };
        return around(body, inner, axis, d);
    }

    private static double at(Plan p, PortUse port) {
        return p.docks().stream()
                .filter(k -> k.use() == port)
                .findFirst()
                .orElseThrow()
                .at();
    }

    private static Plan around(Body body, Art inner, Axis axis, Drafting d) {
        Roles roles = d.roles();
        List<PortUse> through = new ArrayList<>(roles.working());
        through.addAll(roles.gauges());
        Predicate<PortUse> up = u -> u == axis.upper() || u != axis.lower() && u.up();
        List<PortUse> above = through.stream().filter(up).toList();
        List<PortUse> below = through.stream().filter(up.negate()).toList();
        return plan(body, inner, true, above, below, roles.pilots(), roles.drains());
    }

    /** All ports below, as the standard draws what stands at a line's end. */
    static Plan standing(Body body, Drafting d) {
        return plan(body, p -> {}, true, List.of(), d.uses(), List.of(), List.of());
    }

    /** A plain box. */
    static Plan box(Body body, Drafting d) {
        return plan(body, p -> {}, false, d.on(true), d.on(false), List.of(), List.of());
    }

    /** Around a symbol whose ports stand too close for their letters; every port keeps its side. */
    static Plan widened(Plan p) {
        return plan(p.body(), q -> {}, true, on(p, Side.TOP), on(p, Side.BOTTOM), on(p, Side.LEFT), on(p, Side.RIGHT));
    }

    private static List<PortUse> on(Plan p, Side side) {
        return p.docks().stream()
                .filter(d -> d.side() == side)
                .sorted(Comparator.comparingDouble(Dock::at))
                .map(Dock::use)
                .toList();
    }

    private static Plan plan(
            Body body,
            Art inner,
            boolean chain,
            List<PortUse> above,
            List<PortUse> below,
            List<PortUse> left,
            List<PortUse> right) {
        double w = Math.max(body.width() + 2 * ROOM, Math.max(Shelf.extent(above, 2), Shelf.extent(below, 2)));
        double level = 1 + LEVEL_PITCH * Math.max(left.size(), right.size());
        double h = Math.max(body.height() + 2 * ROOM, level);
        List<Dock> docks = new ArrayList<>(Shelf.row(above, Side.TOP, w, 2));
        docks.addAll(Shelf.row(below, Side.BOTTOM, w, 2));
        docks.addAll(column(left, Side.LEFT, h));
        docks.addAll(column(right, Side.RIGHT, h));
        Art art = p -> {
            if (chain) {
                p.chain(0, 0, w, 0, w, h, 0, h);
            } else {
                p.rect(0, 0, w, h);
            }
            inner.draw(p);
            body.art().draw(p.moved((w - body.width()) / 2, (h - body.height()) / 2));
        };
        return new Plan(new Body(w, h, art, body.asks()), docks);
    }

    private static List<Dock> column(List<PortUse> ports, Side side, double height) {
        double start = (height - LEVEL_PITCH * (ports.size() - 1)) / 2;
        List<Dock> docks = new ArrayList<>();
        for (PortUse u : ports) {
            Duty told = Duty.of(u);
            Duty duty = side == Side.LEFT && told == Duty.WORKING ? Duty.CONTROL : told;
            docks.add(new Dock(u, side, start + LEVEL_PITCH * docks.size(), duty, 0));
        }
        return docks;
    }
}
