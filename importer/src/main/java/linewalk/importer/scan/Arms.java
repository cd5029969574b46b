package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The arms of a seat touch its ball. There thinning leaves one line of two, and of each arm little more than its free end:
 * such an end is led on along the ball for as long as its ink goes on.
 */
final class Arms {

    /** Radius of a ball at most, and length of an arm, in widths of the ink and in radii. */
    private static final double LARGEST = 16;

    private static final double LONGEST = 4;

    /** By how much the direction of a short end may be wrong. */
    private static final double TURN = Math.toRadians(12);

    /** Share of its length for which there must be ink where the other arm of a seat ought to be. */
    private static final double MIRRORED = 0.85;

    private static final double HALF_PX = 0.5;

    private static final double TURN_STEP = Math.toRadians(1);

    private final List<Round> balls;
    private final Gauge gauge;
    private final Upright upright;

    Arms(List<Rounds.Curve> curves, Gauge gauge, Upright upright) {
        this.balls = curves.stream()
                .filter(Rounds.Curve::closed)
                .map(Rounds.Curve::round)
                .toList();
        this.gauge = gauge;
        this.upright = upright;
    }

    /**
     * The same stretches, arms whole and without their other halves.
     *
     * @param widthPx of each
     */
    List<Stretch> whole(List<Stretch> stretches) {
        List<Stretch> out = new ArrayList<>();
        List<Stretch> arms = new ArrayList<>();
        for (Stretch s : stretches) {
            Stretch arm = balls.stream()
                    .filter(b -> b.r() < LARGEST * s.widthPx())
                    .map(b -> arm(s, b))
                    .filter(a -> a != null)
                    .findFirst()
                    .orElse(null);
            if (arm == null) {
                out.add(s);
            } else if (arms.stream().noneMatch(a -> a.covers(arm))) {
                arms.removeIf(arm::covers);
                arms.add(arm);
            }
        }
        out.removeIf(s -> arms.stream().anyMatch(a -> a.covers(s)));
        List<Stretch> whole = out.stream()
                .filter(s -> bothWays(s).anyMatch(this::touchesBall))
                .toList();
        out.removeAll(whole);
        arms.addAll(whole);
        List<Stretch> lines = List.copyOf(out);
        List<Stretch> mirrored = arms.stream()
                .filter(a -> arms.stream().noneMatch(b -> b != a && bothWays(a).anyMatch(t -> seat(t, b) != null)))
                .flatMap(a -> balls.stream().flatMap(b -> mirrored(a, b, lines)).limit(1))
                .toList();
        out.removeIf(s -> mirrored.stream().anyMatch(a -> a.covers(s)));
        arms.addAll(mirrored);
        List<Stretch> seats =
                straight(arms.stream().map(a -> ended(a, arms, lines)).toList(), lines);
        out.replaceAll(l -> bothWays(l)
                .map(t -> endedAt(t, seats))
                .filter(t -> t != null)
                .findFirst()
                .orElse(l));
        out.addAll(seats);
        return out;
    }

    /** Without arms that a short end led astray: the ball's own seat is the one that a line leads to. */
    private List<Stretch> straight(List<Stretch> seats, List<Stretch> lines) {
        List<Stretch> led = seats.stream()
                .filter(s -> seats.stream().anyMatch(o -> o != s && sameTip(o, s))
                        && lines.stream().flatMap(Arms::bothWays).anyMatch(l -> leadsTo(l, s)))
                .toList();
        return seats.stream()
                .filter(s -> led.contains(s)
                        || balls.stream()
                                .noneMatch(b -> bothWays(s).anyMatch(t -> touches(t, b))
                                        && led.stream().anyMatch(o -> touches(o, b))))
                .toList();
    }

    private static boolean sameTip(Stretch a, Stretch b) {
        return a.x1() == b.x1() && a.y1() == b.y1();
    }

    private static Stream<Stretch> bothWays(Stretch s) {
        return Stream.of(s, s.turned());
    }

    /** Both arms of a seat are of one pen and end where they meet, on the line that leads there. */
    private static Stretch ended(Stretch arm, List<Stretch> arms, List<Stretch> lines) {
        return bothWays(arm)
                .flatMap(a -> arms.stream().filter(b -> b != arm).map(b -> seat(a, b)))
                .filter(a -> a != null)
                .map(a -> onLine(a, lines))
                .findFirst()
                .orElse(arm);
    }

    private static Stretch onLine(Stretch arm, List<Stretch> lines) {
        return lines.stream()
                .flatMap(Arms::bothWays)
                .filter(l -> leadsTo(l, arm))
                .findFirst()
                .map(l -> l.at(l.along(arm.x1(), arm.y1()), 0))
                .map(x -> new Stretch(arm.x0(), arm.y0(), x[0], x[1], arm.widthPx()))
                .orElse(arm);
    }

    /** A line that leads to a seat ends there; null for others. */
    private static Stretch endedAt(Stretch l, List<Stretch> seats) {
        return seats.stream()
                .filter(s -> leadsTo(l, s) && seats.stream().anyMatch(o -> o != s && sameTip(o, s)))
                .findFirst()
                .map(s -> new Stretch(l.x0(), l.y0(), s.x1(), s.y1(), l.widthPx()))
                .orElse(null);
    }

    private static boolean leadsTo(Stretch l, Stretch arm) {
        return l.aside(arm.x1(), arm.y1()) < near(arm)
                && Math.abs(l.along(arm.x1(), arm.y1()) - l.length()) < 2 * near(arm);
    }

    /** An arm as it ends where another meets it that leads there too; null where none does. */
    private static Stretch seat(Stretch a, Stretch other) {
        double[] x = a.crossing(other);
        double near = 2 * near(a);
        boolean tip = x != null
                && Math.hypot(x[0] - a.x1(), x[1] - a.y1()) < near
                && bothWays(other).anyMatch(b -> Math.hypot(x[0] - b.x1(), x[1] - b.y1()) < near);
        return tip ? new Stretch(a.x0(), a.y0(), x[0], x[1], Math.min(a.widthPx(), other.widthPx())) : null;
    }

    /** An arm that came whole. */
    private boolean touchesBall(Stretch s) {
        return balls.stream()
                .anyMatch(b -> b.r() < LARGEST * s.widthPx() && s.length() < LONGEST * b.r() && touches(s, b));
    }

    private static boolean touches(Stretch s, Round ball) {
        double past = s.along(ball.x(), ball.y());
        return Math.abs(s.aside(ball.x(), ball.y()) - ball.r()) < near(s)
                && past > 0
                && s.length() - past > 0.45 * ball.r();
    }

    private static double near(Stretch s) {
        return 0.5 * s.widthPx() + 2;
    }

    /** The other arm of the seat, where there is ink for it: of this one's length, on the other side of the ball. */
    private Stream<Stretch> mirrored(Stretch arm, Round ball, List<Stretch> lines) {
        return bothWays(arm)
                .filter(a -> touches(a, ball))
                .map(a -> mirrored(onLine(a, lines), ball.x(), ball.y()))
                .map(m -> inked(m, ball))
                .filter(m -> m != null);
    }

    /** As its ink lies, at most a width beside where it is looked for; null where there is not enough. */
    private Stretch inked(Stretch s, Round ball) {
        double w = s.widthPx();
        for (double off = 0; off <= w; off = off > 0 ? -off : HALF_PX - off) {
            double[] inside = s.at(w, off);
            Stretch from = new Stretch(inside[0], inside[1], s.x1(), s.y1(), w);
            Stretch ink = ledOn(from, s.length());
            if (ink.length() > MIRRORED * from.length() && touches(ink, ball)) {
                double[] free = ink.at(-w, 0);
                return new Stretch(free[0], free[1], ink.x1(), ink.y1(), w);
            }
        }
        return null;
    }

    /** On the other side of the line from a place to its end. */
    private static Stretch mirrored(Stretch s, double x, double y) {
        Stretch axis = new Stretch(x, y, s.x1(), s.y1(), s.widthPx());
        double[] foot = axis.at(axis.along(s.x0(), s.y0()), 0);
        return new Stretch(2 * foot[0] - s.x0(), 2 * foot[1] - s.y0(), s.x1(), s.y1(), s.widthPx());
    }

    /** Null where the stretch is no arm of this ball's seat. */
    private Stretch arm(Stretch s, Round ball) {
        double near = near(s);
        for (Stretch t : List.of(s, s.turned())) {
            double free = Math.hypot(t.x0() - ball.x(), t.y0() - ball.y()) - ball.r();
            boolean beside = ball.off(t.x1(), t.y1()) < 3 * near && free > near;
            if (beside && t.length() < LONGEST * ball.r() && t.aside(ball.x(), ball.y()) > 0.7 * ball.r()) {
                Stretch whole = ledOn(t, LONGEST * ball.r());
                boolean grown = whole.length() > t.length() + 0.3 * ball.r();
                if (touches(whole, ball) && grown && whole.length() < LONGEST * ball.r()) {
                    return whole;
                }
            }
        }
        return null;
    }

    /** From its free end in the direction in which its ink goes furthest. */
    private Stretch ledOn(Stretch s, double most) {
        double angle = Math.atan2(s.y1() - s.y0(), s.x1() - s.x0());
        double best = 0;
        double sum = 0;
        int n = 0;
        for (double turn = -TURN; turn <= TURN; turn += TURN_STEP) {
            double reach = reach(s, angle + turn, most);
            if (reach > best + 1) {
                best = reach;
                sum = 0;
                n = 0;
            }
            if (reach > best - 1) {
                sum += angle + turn;
                n++;
            }
        }
        double a = sum / n;
        return new Stretch(s.x0(), s.y0(), s.x0() + best * Math.cos(a), s.y0() + best * Math.sin(a), s.widthPx());
    }

    /** Begins inside the ink: a free end lies at its rim. */
    private double reach(Stretch s, double angle, double most) {
        double d = 0.5 * s.widthPx();
        while (d < most && gauge.ink(upright, s.x0() + d * Math.cos(angle), s.y0() + d * Math.sin(angle))) {
            d += 0.5;
        }
        return d;
    }
}
