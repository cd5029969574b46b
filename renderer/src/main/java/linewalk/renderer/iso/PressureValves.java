package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Passage;
import linewalk.drawing.Passage.Opens;
import linewalk.drawing.Position.How;

/**
 * One square with an arrow, a spring at its right and the pressure that works against the spring at its left. The arrow
 * stands beside the lines where the valve is shut at rest, in line with them where it stands open.
 */
final class PressureValves {

    private static final double X = 3.5;
    private static final double HEIGHT = 5.5;
    private static final double MIDDLE = HEIGHT / 2;
    private static final double PILOT_Y = MIDDLE;
    private static final double DRAIN_Y = 4.2;

    private PressureValves() {}

    static Plan relief(Drafting d) {
        return valve(d, false, d.roles().pilots().isEmpty() ? Source.INLET : Source.OUTSIDE, false);
    }

    /** With a drain from the spring chamber, since its outlet is under pressure. */
    static Plan sequence(Drafting d) {
        return valve(d, false, d.roles().pilots().isEmpty() ? Source.INLET : Source.OUTSIDE, true);
    }

    static Plan unloading(Drafting d) {
        boolean own = d.passages().anyMatch(x -> x.opens() == Opens.PRESSURE);
        return valve(d, false, own && d.roles().pilots().isEmpty() ? Source.INLET : Source.OUTSIDE, false);
    }

    static Plan reducing(Drafting d) {
        return valve(d, true, Source.OUTLET, true);
    }

    private enum Source {
        INLET,
        OUTLET,
        OUTSIDE
    }

    private static Plan valve(Drafting d, boolean open, Source source, boolean vented) {
        Roles roles = d.roles();
        List<PortUse> working = new ArrayList<>(roles.working());
        List<PortUse> drains = new ArrayList<>(roles.drains());
        if (working.size() == 3 && drains.isEmpty()) {
            working.stream().filter(PressureValves::isReturn).findFirst().ifPresent(t -> {
                working.remove(t);
                drains.add(t);
            });
        }
        Axis axis = Axis.of(working);
        Way told = axis.way(d, x -> true);
        Way way = told.told() ? told : axis.byLetters();
        Body body = new Body(8.25, HEIGHT, p -> {
            Pen q = p.flipped(way.down(), HEIGHT);
            square(q, 0.75, open, way);
            spring(p, MIDDLE);
            if (source != Source.OUTSIDE && way.told()) {
                inside(q, source == Source.INLET ? HEIGHT - 0.4 : 0.4, MIDDLE);
            } else if (roles.pilots().isEmpty()) {
                p.dashes(1.5, PILOT_Y, 0.1, PILOT_Y);
            }
            if (drains.isEmpty() && vented) {
                p.dashes(5.5, DRAIN_Y, 7.6, DRAIN_Y);
            }
        });
        return InLine.plain(X)
                .pilot(source == Source.OUTSIDE ? PILOT_Y : Double.NaN, 1.5)
                .drain(DRAIN_Y, 8.25 - 5.5)
                .plan(d, body, working, roles.pilots(), drains);
    }

    private static boolean isReturn(PortUse u) {
        return u.name() != null && u.name().strip().matches("(?i)[TR]\\d?");
    }

    /** Flow upwards, with the lines above and below; a question mark for the arrow's head where it is not told. */
    private static void square(Pen p, double y, boolean open, Way way) {
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

    /** Adjustable. */
    private static void spring(Pen p, double y) {
        Signs.spring(p, 5.5, 7.75, y);
        p.arrow(5.7, y + 1.25, 7.75, y - 1.6);
    }

    /** From a line of the valve itself. */
    private static void inside(Pen p, double fromY, double y) {
        p.dashes(X, fromY, 0.4, fromY, 0.4, y, 1.5, y);
    }

    /** Free through the check, back only through the valve. */
    static Plan counterbalance(Drafting d) {
        Axis axis = Axis.of(d.roles().working());
        Way opened = axis.way(d, x -> x.opens() != null);
        Way check = axis.way(d, x -> x.oneWay() && x.opens() == null);
        Way free = check.told() ? check : opened.back();
        boolean own = d.passages().anyMatch(x -> x.opens() == Opens.PRESSURE);
        boolean outside = !own
                || !d.roles().pilots().isEmpty()
                || d.part().positions().stream().anyMatch(p -> p.how() == How.PILOT)
                || d.passages().map(Passage::opens).anyMatch(o -> o == Opens.PILOT);
        double height = 8;
        double pilotY = free.down() ? height - 5 : 5;
        boolean piloted = !d.roles().pilots().isEmpty();
        Body body = new Body(11.75, height, p -> {
            Pen q = p.flipped(free.down(), height);
            controlled(q, free, own && free.told(), outside && !piloted);
            spring(p, height / 2);
            bypass(q, free, 10, height);
        });
        return InLine.plain(X).pilot(pilotY, 1.5).plan(d, body);
    }

    /** Drawn for oil that is free upwards, so controlled downwards. */
    private static void controlled(Pen p, Way free, boolean own, boolean outside) {
        p.rect(1.5, 2, 4, 4);
        p.lines(X, 0, X, 2);
        p.lines(X, 6, X, 8);
        if (free.told()) {
            p.arrow(2.5, 2, 2.5, 6);
        } else {
            p.lines(2.5, 2.8, 2.5, 5.2);
            p.text("?", 4.4, 4);
        }
        if (own) {
            inside(p, 1.3, 3);
        }
        if (outside) {
            p.dashes(1.5, 5, 0.1, 5);
        }
    }

    /** A check beside the valve, from below to above. */
    static void bypass(Pen p, Way free, double x, double height) {
        double y = height / 2 - 0.2;
        p.dot(X, 0.6);
        p.dot(X, height - 0.6);
        p.lines(X, 0.6, x, 0.6, x, y - Signs.BALL);
        if (free.told()) {
            Signs.check(p, x, y);
        } else {
            Signs.ball(p, x, y);
        }
        p.lines(x, y + (free.told() ? Signs.TIP : Signs.BALL), x, height - 0.6, X, height - 0.6);
    }
}
