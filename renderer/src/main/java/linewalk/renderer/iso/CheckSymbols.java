package linewalk.renderer.iso;

import linewalk.drawing.Passage;

/**
 * Valves with a ball on a seat. The seat's tip points to where the oil comes from that lifts the ball; where that is not
 * told there is no seat but a question mark in the ball.
 */
final class CheckSymbols {

    private static final double HEIGHT = 4;
    private static final double BALL_Y = 1.8;
    /** Of a pilot line: it meets the seat's side. */
    private static final double PILOT_Y = 2.6;

    private CheckSymbols() {}

    static Plan check(Drafting d) {
        Way free = free(d);
        Body body = new Body(4, HEIGHT, p -> ball(p.flipped(free.down(), HEIGHT), 2, free));
        return InLine.plain(2).plan(d, body);
    }

    /** The passage that needs nothing to open it. */
    static Way free(Drafting d) {
        return Axis.of(d.roles().working()).way(d, x -> x.oneWay() && x.opens() == null);
    }

    static Plan pilotCheck(Drafting d) {
        Way free = free(d);
        boolean drained = !d.roles().drains().isEmpty();
        double pilotY = free.down() ? HEIGHT - PILOT_Y : PILOT_Y;
        Body body = new Body(5.5, HEIGHT, p -> {
            Pen q = p.flipped(free.down(), HEIGHT);
            ball(q, 3, free);
            pilot(q, 0, 3, free);
            if (drained) {
                q.dashes(5.5, PILOT_Y, 3 + flank(free), PILOT_Y);
            }
        });
        return new InLine(3, pilotY, pilotY).plan(d, body);
    }

    private static void ball(Pen p, double x, Way free) {
        p.lines(x, 0, x, BALL_Y - Signs.BALL);
        if (free.told()) {
            Signs.check(p, x, BALL_Y);
            p.lines(x, BALL_Y + Signs.TIP, x, HEIGHT);
        } else {
            Signs.ball(p, x, BALL_Y);
            p.lines(x, BALL_Y + Signs.BALL, x, HEIGHT);
        }
    }

    private static void pilot(Pen p, double from, double x, Way free) {
        p.dashes(from, PILOT_Y, x - flank(free), PILOT_Y);
    }

    /** From the axis to the seat's side, or to the ball, at the height of the pilot line. */
    private static double flank(Way free) {
        return free.told() ? BALL_Y + Signs.TIP - PILOT_Y : 0.62;
    }

    /** A large pilot check with a weak spring, in the frame of its own body. */
    static Plan prefill(Drafting d) {
        Way free = free(d);
        double height = 6;
        double pilotY = free.down() ? height - 3.9 : 3.9;
        Body body = new Body(7, height, p -> {
            Pen q = p.flipped(free.down(), height);
            q.rect(1.5, 0.75, 5, 4.5);
            q.lines(4, 0, 4, 1.1);
            Signs.uprightSpring(q, 1.1, 2.1, 4);
            seated(q, 4, 3.1, height, free);
            q.dashes(0, 3.9, 1.5, 3.9);
            q.dashes(1.5, 3.9, 4 - (free.told() ? 3.1 + Signs.TIP - 3.9 : 0.62), 3.9);
        });
        return new InLine(4, pilotY, Double.NaN).plan(d, body);
    }

    /** A pilot check with a throttle behind it, in one frame: the oil expands slowly. */
    static Plan decompression(Drafting d) {
        Way free = Axis.of(d.roles().working()).way(d, Passage::oneWay);
        double height = 7.5;
        double pilotY = free.down() ? height - 5.3 : 5.3;
        Body body = new Body(7, height, p -> {
            Pen q = p.flipped(free.down(), height);
            q.rect(1.5, 0.75, 5, 6);
            q.lines(4, 0, 4, 3.5);
            Signs.throttle(q, 4, 2.1);
            seated(q, 4, 4.5, height, free);
            q.dashes(0, 5.3, 4 - (free.told() ? 4.5 + Signs.TIP - 5.3 : 0.62), 5.3);
        });
        return new InLine(4, pilotY, Double.NaN).plan(d, body);
    }

    private static void seated(Pen p, double x, double y, double height, Way free) {
        if (free.told()) {
            Signs.check(p, x, y);
            p.lines(x, y + Signs.TIP, x, height);
        } else {
            Signs.ball(p, x, y);
            p.lines(x, y + Signs.BALL, x, height);
        }
    }
}
