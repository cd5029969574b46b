package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Passage.Opens;

/**
 * One square with an arrow, a spring at its right and the pressure that works against the spring at its left. The arrow
 * stands beside the lines where the valve is shut at rest, in line with them where it stands open.
 */
final class PressureValves {

    static final double X = 3.5;

    private static final double WIDTH = 8.25;
    private static final double HEIGHT = 5.5;
    private static final double PILOT_Y = HEIGHT / 2;
    private static final double DRAIN_Y = 4.2;

    private PressureValves() {}

    /** Where the pressure comes from that moves the valve. */
    private enum Source {
        INLET,
        OUTLET,
        OUTSIDE
    }

    /** @param vented the spring chamber has a line of its own, since the outlet is under pressure */
    private record Type(boolean open, Source source, boolean vented) {}

    static Plan relief(Drafting d) {
        return valve(d, new Type(false, inletOr(d), false));
    }

    static Plan sequence(Drafting d) {
        return valve(d, new Type(false, inletOr(d), true));
    }

    private static Source inletOr(Drafting d) {
        return d.roles().pilots().isEmpty() ? Source.INLET : Source.OUTSIDE;
    }

    static Plan unloading(Drafting d) {
        boolean own = d.passages().anyMatch(x -> x.opens() == Opens.PRESSURE);
        return valve(d, new Type(false, own ? inletOr(d) : Source.OUTSIDE, false));
    }

    static Plan reducing(Drafting d) {
        return valve(d, new Type(true, Source.OUTLET, true));
    }

    private static Plan valve(Drafting d, Type type) {
        InLine.Ports ports = ports(d);
        InLine places = InLine.plain(X)
                .pilot(type.source == Source.OUTSIDE ? PILOT_Y : Double.NaN, 1.5)
                .drain(DRAIN_Y, WIDTH - 5.5);
        boolean piloted = !ports.pilots().isEmpty() && places.fits(d, ports);
        Way way = way(
                d, Axis.of(places.fits(d, ports) ? ports.working() : d.roles().through()), type.open);
        Body body = new Body(WIDTH, HEIGHT, p -> {
            Pen q = p.flipped(way.down(), HEIGHT);
            square(q, type.open, way);
            Signs.adjustableSpring(p, 5.5, PILOT_Y);
            if (type.source != Source.OUTSIDE && way.told()) {
                inside(q, type.source == Source.INLET ? HEIGHT - 0.4 : 0.4, PILOT_Y);
            } else if (!piloted) {
                p.dashes(1.5, PILOT_Y, 0.1, PILOT_Y);
            }
            if (ports.drains().isEmpty() && type.vented) {
                p.dashes(5.5, DRAIN_Y, 7.6, DRAIN_Y);
            }
        });
        return places.plan(d, body.asking(!way.told()), ports);
    }

    /** The return of three working ports takes the place of the drain. */
    private static InLine.Ports ports(Drafting d) {
        InLine.Ports told = InLine.Ports.of(d);
        List<PortUse> returns =
                told.working().stream().filter(PressureValves::isReturn).toList();
        if (told.working().size() != 3 || returns.size() != 1 || !told.drains().isEmpty()) {
            return told;
        }
        List<PortUse> working = new ArrayList<>(told.working());
        working.removeAll(returns);
        return new InLine.Ports(working, told.pilots(), returns);
    }

    private static boolean isReturn(PortUse u) {
        return u.name() != null && u.name().strip().matches("(?i)[TR]\\d?");
    }

    /** A passage that stands open tells its way by its order only, so letters come before it. */
    private static Way way(Drafting d, Axis axis, boolean open) {
        Way sure = axis.way(d.atRest(), x -> x.oneWay() || x.opens() != null);
        if (sure.told()) {
            return sure;
        }
        Way letters = axis.byLetters();
        return letters.told() || !open ? letters : axis.way(d.atRest(), x -> true);
    }

    /** Flow upwards, with the lines above and below; a question mark for the arrow's head where it is not told. */
    private static void square(Pen p, boolean open, Way way) {
        double y = (HEIGHT - 4) / 2;
        p.rect(1.5, y, 4, 4);
        p.lines(X, 0, X, y);
        p.lines(X, y + 4, X, HEIGHT);
        double x = open ? X : 2.5;
        if (way.told()) {
            p.arrow(x, y + 4, x, y);
        } else {
            p.lines(x, y + 3.2, x, y + 0.8);
            p.text("?", 4.4, y + 2);
        }
    }

    /** From a line of the valve itself. */
    static void inside(Pen p, double fromY, double y) {
        p.dashes(X, fromY, 0.4, fromY, 0.4, y, 1.5, y);
    }
}
