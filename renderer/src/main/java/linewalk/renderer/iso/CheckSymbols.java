package linewalk.renderer.iso;

import linewalk.drawing.Passage.Opens;

/**
 * Valves with a ball on a seat. The seat's tip points to where the oil comes from that lifts the ball; where that is not
 * told there is no seat but a question mark in the ball.
 */
final class CheckSymbols {

    /** Pilot lines meet the seat's side, so far below the ball's middle. */
    private static final double PILOT = 0.8;

    private CheckSymbols() {}

    /** The way at rest, which no pilot must open. */
    private static Way free(Drafting d) {
        return Axis.of(d.roles().through()).way(d.atRest(), x -> x.oneWay() && x.opens() != Opens.PILOT);
    }

    static Plan check(Drafting d) {
        Way free = free(d);
        Body body = new Body(4, 4, p -> seated(p.flipped(free.down(), 4), 2, 0, 1.8, 4, free));
        return InLine.plain(2).plan(d, body.asking(!free.told()));
    }

    static Plan pilotCheck(Drafting d) {
        Way free = free(d);
        return piloted(
                d,
                free,
                new Body(5.5, 4, p -> {
                    Pen q = p.flipped(free.down(), 4);
                    seated(q, 3, 0, 1.8, 4, free);
                }),
                3,
                1.8);
    }

    /** A large pilot check with a weak spring, in the frame of its own body. */
    static Plan prefill(Drafting d) {
        Way free = free(d);
        double height = 6.75;
        return piloted(
                d,
                free,
                new Body(7, height, p -> {
                    Pen q = p.flipped(free.down(), height);
                    q.rect(1.5, 0.75, 5, 5.25);
                    q.lines(4, 0, 4, 0.75);
                    Signs.uprightSpring(q, 0.75, 2.2, 4);
                    seated(q, 4, 2.2, 3.2, height, free);
                }),
                4,
                3.2);
    }

    /** A pilot check with a throttle behind it, in one frame: the oil expands slowly. */
    static Plan decompression(Drafting d) {
        Way free = free(d);
        double height = 7.5;
        return piloted(
                d,
                free,
                new Body(7, height, p -> {
                    Pen q = p.flipped(free.down(), height);
                    q.rect(1.5, 0.75, 5, 6);
                    Signs.throttle(q, 4, 2.1);
                    seated(q, 4, 0, 4.5, height, free);
                }),
                4,
                4.5);
    }

    /** The ball on its axis, with the lines above and below it. */
    private static void seated(Pen p, double x, double from, double y, double to, Way free) {
        if (from < y - Signs.BALL) {
            p.lines(x, from, x, y - Signs.BALL);
        }
        if (free.told()) {
            Signs.check(p, x, y);
        } else {
            Signs.ball(p, x, y);
        }
        p.lines(x, y + (free.told() ? Signs.TIP : Signs.BALL), x, to);
    }

    /** With a pilot line at the left, short where no port is shown, and a drain line at the right if there is one. */
    private static Plan piloted(Drafting d, Way free, Body body, double x, double ballY) {
        double pilotY = ballY + (free.down() ? -PILOT : PILOT) + (free.down() ? body.height() - 2 * ballY : 0);
        double flank = free.told() ? Signs.TIP - PILOT : 0.62;
        InLine ports = InLine.plain(x).pilot(pilotY, x - flank).drain(pilotY, body.width() - x - flank);
        boolean shown = d.roles().pilots().size() == 1 && ports.fits(d);
        Body drawn = new Body(body.width(), body.height(), p -> {
            body.art().draw(p);
            if (!shown) {
                p.dashes(x - flank, pilotY, 0.3, pilotY);
            }
        });
        return ports.plan(d, drawn.asking(!free.told()));
    }
}
