package linewalk.renderer.iso;

import linewalk.drawing.Passage;
import linewalk.drawing.Passage.Opens;
import linewalk.drawing.Position.How;

/** A pressure valve with a check beside it: free through the check, back only through the valve. */
final class Counterbalance {

    private static final double HEIGHT = 8;
    private static final double PILOT_Y = 5;

    private Counterbalance() {}

    static Plan plan(Drafting d) {
        Way free = free(d);
        InLine places = InLine.plain(PressureValves.X).pilot(free.down() ? HEIGHT - PILOT_Y : PILOT_Y, 1.5);
        boolean own = d.passages().anyMatch(x -> x.opens() == Opens.PRESSURE);
        boolean piloted = !d.roles().pilots().isEmpty() && places.fits(d);
        boolean stub = !piloted && (!own || isPiloted(d));
        Body body = new Body(11.75, HEIGHT, p -> {
            Pen q = p.flipped(free.down(), HEIGHT);
            square(q, free);
            Signs.adjustableSpring(p, 5.5, HEIGHT / 2);
            Signs.bypass(q, free, PressureValves.X, 10, HEIGHT);
            if (own && free.told()) {
                PressureValves.inside(q, 1.3, 3);
            }
            if (stub) {
                q.dashes(1.5, PILOT_Y, 0.1, PILOT_Y);
            }
        });
        return places.plan(d, body.asking(!free.told()));
    }

    /** Through the check; against what is opened where no check is told. */
    private static Way free(Drafting d) {
        Axis axis = Axis.of(d.roles().through());
        Way check = axis.way(d.atRest(), x -> x.oneWay() && x.opens() == null);
        return check.told()
                ? check
                : axis.way(d.passages().toList(), x -> x.oneWay() && x.opens() != null)
                        .back();
    }

    private static boolean isPiloted(Drafting d) {
        return d.part().positions().stream().anyMatch(p -> p.how() == How.PILOT)
                || d.passages().map(Passage::opens).anyMatch(o -> o == Opens.PILOT)
                || !d.roles().pilots().isEmpty();
    }

    /** Drawn for oil that is free upwards, so controlled downwards. */
    private static void square(Pen p, Way free) {
        double x = PressureValves.X;
        p.rect(1.5, 2, 4, 4);
        p.lines(x, 0, x, 2);
        p.lines(x, 6, x, HEIGHT);
        if (free.told()) {
            p.arrow(2.5, 2, 2.5, 6);
        } else {
            p.lines(2.5, 2.8, 2.5, 5.2);
            p.text("?", 4.4, 4);
        }
    }
}
