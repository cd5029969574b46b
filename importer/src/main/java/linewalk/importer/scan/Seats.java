package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Seats whose arms reach so little beyond their ball that thinning left nothing of them: from a tip on the way in or out
 * both arms touch the ball and go on to free ends, in ink all the way and with paper beside.
 */
final class Seats {

    /** Radius of a ball, in widths of its pen. */
    private static final double LARGEST = 16;

    /** From the ball's middle to the tip, in its radii. */
    private static final double NEAREST = 1.1;

    private static final double FARTHEST = 2.1;

    /** How far arms reach beyond where they touch the ball, in its radii. */
    private static final double LEAST = 0.3;

    private static final double MOST = 1.6;

    /** Both arms are alike long. */
    private static final double ALIKE = 0.7;

    private static final double PAPER = 0.7;

    private final Gauge gauge;
    private final Upright upright;

    private record Seat(Stretch one, Stretch other, double reach) {}

    Seats(Gauge gauge, Upright upright) {
        this.gauge = gauge;
        this.upright = upright;
    }

    /** The arms of balls that have none among what is drawn. */
    List<Stretch> missing(Collection<Rounds.Curve> curves, Collection<Stretch> drawn) {
        List<Stretch> out = new ArrayList<>();
        for (Rounds.Curve c : curves) {
            if (c.closed()) {
                around(c.round(), drawn).ifPresent(s -> {
                    out.add(s.one);
                    out.add(s.other);
                });
            }
        }
        return out;
    }

    private Optional<Seat> around(Round ball, Collection<Stretch> drawn) {
        double pen = pen(ball);
        if (pen <= 0
                || ball.r() > LARGEST * pen
                || ball.r() < 1.5 * pen
                || !isEmpty(ball)
                || drawn.stream().anyMatch(s -> isArm(s, ball))) {
            return Optional.empty();
        }
        Seat best = null;
        for (int quarter = 0; quarter < 4; quarter++) {
            double dx = Math.round(Math.cos(quarter * Math.PI / 2));
            double dy = Math.round(Math.sin(quarter * Math.PI / 2));
            for (double t = NEAREST * ball.r(); t < FARTHEST * ball.r(); t += 1) {
                for (double off = 0; off <= pen; off += pen / 2) {
                    Seat s = seat(ball, dx, dy, t, ball.r() + off, pen);
                    best = s != null && (best == null || s.reach > best.reach) ? s : best;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** No line runs through it, as through the mark of a port. */
    private boolean isEmpty(Round ball) {
        for (int i = 0; i < 8; i++) {
            double dx = 0.5 * ball.r() * Math.cos(i * Math.PI / 4);
            double dy = 0.5 * ball.r() * Math.sin(i * Math.PI / 4);
            if (gauge.ink(upright, ball.x() + dx, ball.y() + dy)) {
                return false;
            }
        }
        return true;
    }

    /** A slanting stretch that touches the ball. */
    private static boolean isArm(Stretch s, Round ball) {
        double slope = Math.min(Math.abs(s.x1() - s.x0()), Math.abs(s.y1() - s.y0()));
        double from = Math.hypot(s.x0() - ball.x(), s.y0() - ball.y());
        double to = Math.hypot(s.x1() - ball.x(), s.y1() - ball.y());
        return slope > 0.3 * s.length()
                && Math.min(from, to) < 2 * ball.r()
                && s.aside(ball.x(), ball.y()) < 2 * ball.r();
    }

    private double pen(Round ball) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 16; i++) {
            double dx = Math.cos(Math.PI * i / 8);
            double dy = Math.sin(Math.PI * i / 8);
            double x = upright.backX(ball.x() + ball.r() * dx, ball.y() + ball.r() * dy);
            double y = upright.backY(ball.x() + ball.r() * dx, ball.y() + ball.r() * dy);
            double thick = gauge.thickness((int) Math.floor(x), (int) Math.floor(y));
            least = thick > 0 ? Math.min(least, thick) : least;
        }
        return least == Double.MAX_VALUE ? 0 : least;
    }

    private Seat seat(Round ball, double dx, double dy, double t, double touch, double pen) {
        if (touch >= t) {
            return null;
        }
        double sin = touch / t;
        double cos = Math.sqrt(1 - sin * sin);
        double[] tip = {ball.x() + t * dx, ball.y() + t * dy};
        if (!gauge.ink(upright, tip[0], tip[1])) {
            return null;
        }
        Stretch[] arms = new Stretch[2];
        double[] reach = new double[2];
        for (int i = 0; i < 2; i++) {
            double sign = i == 0 ? 1 : -1;
            double ax = -cos * dx - sign * sin * dy;
            double ay = -cos * dy + sign * sin * dx;
            double most = t * cos + MOST * ball.r();
            double end = 0;
            while (end < most && gauge.ink(upright, tip[0] + end * ax, tip[1] + end * ay)) {
                end += 0.5;
            }
            reach[i] = end - t * cos;
            double out = Math.hypot(tip[0] + end * ax - ball.x(), tip[1] + end * ay - ball.y());
            boolean free = end < most
                    && reach[i] > LEAST * ball.r()
                    && out > ball.r() + 1.2 * pen + 1
                    && paper(tip, ax, ay, t * cos, end, sign, pen);
            if (!free) {
                return null;
            }
            arms[i] = new Stretch(tip[0] + end * ax, tip[1] + end * ay, tip[0], tip[1], pen);
        }
        double shorter = Math.min(reach[0], reach[1]);
        return shorter > ALIKE * Math.max(reach[0], reach[1]) ? new Seat(arms[0], arms[1], shorter) : null;
    }

    /** Outside along the whole arm, a pen's width away from its ink. */
    private boolean paper(double[] tip, double ax, double ay, double from, double to, double sign, double pen) {
        int n = 0;
        int paper = 0;
        for (double s = from; s <= to; s += 1) {
            double x = tip[0] + s * ax - sign * 1.6 * pen * ay;
            double y = tip[1] + s * ay + sign * 1.6 * pen * ax;
            n++;
            paper += gauge.ink(upright, x, y) ? 0 : 1;
        }
        return paper >= PAPER * n;
    }
}
