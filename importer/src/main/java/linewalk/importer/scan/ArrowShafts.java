package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Shafts of oblique arrows across a throttle or a circle. Thinning leaves of them only what walls, lines and heads do not
 * hide, and that askew: so their ink is followed instead.
 */
final class ArrowShafts {

    /** Between the arrow and the line, in degrees. */
    private static final int FLATTEST = 15;

    private static final int STEEPEST = 75;

    /** How far beside the waist it may cross the line, and how long it may be, in half lengths of a wall. */
    private static final double BESIDE = 0.25;

    private static final double LONGEST = 4;

    /** It leads at least so far aside at both ends, in distances of the walls' ends from the line. */
    private static final double OUT = 0.9;

    /** Ways that are so nearly the longest lie in the same ink. */
    private static final double ALIKE = 0.97;

    private static final double MILD = Math.toRadians(8);

    /** Longest shaft, in lengths of its head. */
    private static final double FAR = 20;

    private static final double FINE = Math.toRadians(0.25);

    /** Sine of the least angle between an oblique shaft and level or upright ones. */
    private static final double OBLIQUE = 0.2;

    private final Gauge gauge;
    private final Upright upright;

    ArrowShafts(Gauge gauge, Upright upright) {
        this.gauge = gauge;
        this.upright = upright;
    }

    private record Way(double turn, double[] a, double[] b) {
        double length() {
            return Math.hypot(b[0] - a[0], b[1] - a[1]);
        }
    }

    /** The arrow across a throttle; nothing where no ink leads across. */
    Optional<Stretch> across(Waists.Waist w) {
        double[] wallEnd = w.walls().get(0).get(0);
        double least = OUT * w.flow().aside(wallEnd[0], wallEnd[1]);
        List<Way> ways = new ArrayList<>();
        for (int deg = FLATTEST; deg <= STEEPEST; deg++) {
            for (double beside = -BESIDE * w.half(); beside <= BESIDE * w.half(); beside += 1) {
                way(w, Math.toRadians(deg), beside, least).ifPresent(ways::add);
                way(w, -Math.toRadians(deg), beside, least).ifPresent(ways::add);
            }
        }
        return longest(ways);
    }

    /** What a head stands on, up to its tip; nothing where the head is level or upright, or no ink leads on behind it. */
    Optional<Stretch> behind(Solid head) {
        double[] tip = tip(head);
        double[] m = head.middle();
        double[] base = {(3 * m[0] - tip[0]) / 2, (3 * m[1] - tip[1]) / 2};
        double length = Math.hypot(base[0] - tip[0], base[1] - tip[1]);
        double dx = (base[0] - tip[0]) / length;
        double dy = (base[1] - tip[1]) / length;
        if (Math.min(Math.abs(dx), Math.abs(dy)) < OBLIQUE) {
            return Optional.empty();
        }
        double most = FAR * length;
        List<Way> ways = new ArrayList<>();
        for (double turn = -MILD; turn <= MILD; turn += FINE) {
            double ex = dx * Math.cos(turn) - dy * Math.sin(turn);
            double ey = dy * Math.cos(turn) + dx * Math.sin(turn);
            double reach = reach(base[0], base[1], ex, ey, most);
            if (reach > length && reach < most) {
                ways.add(new Way(turn, tip, new double[] {base[0] + reach * ex, base[1] + reach * ey}));
            }
        }
        return longest(ways);
    }

    /** The corner between the two sides that are most alike. */
    private static double[] tip(Solid head) {
        List<double[]> c = head.outline();
        double[] tip = c.get(0);
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            double[] p = c.get(i);
            double[] q = c.get((i + 1) % 3);
            double[] r = c.get((i + 2) % 3);
            double differ = Math.abs(Math.hypot(p[0] - q[0], p[1] - q[1]) - Math.hypot(p[0] - r[0], p[1] - r[1]));
            if (differ < least) {
                least = differ;
                tip = p;
            }
        }
        return tip;
    }

    private Optional<Stretch> longest(List<Way> ways) {
        return ways.stream().max(Comparator.comparingDouble(Way::length)).map(best -> middle(best, ways));
    }

    private Optional<Way> way(Waists.Waist w, double turn, double beside, double least) {
        double fx = w.flow().dx();
        double fy = w.flow().dy();
        double dx = fx * Math.cos(turn) - fy * Math.sin(turn);
        double dy = fy * Math.cos(turn) + fx * Math.sin(turn);
        double x = w.x() + beside * fx;
        double y = w.y() + beside * fy;
        double most = LONGEST * w.half();
        double on = reach(x, y, dx, dy, most);
        double back = reach(x, y, -dx, -dy, most);
        boolean across = Math.min(on, back) * Math.abs(Math.sin(turn)) > least && Math.max(on, back) < most;
        return across
                ? Optional.of(new Way(
                        turn, new double[] {x - back * dx, y - back * dy}, new double[] {x + on * dx, y + on * dy}))
                : Optional.empty();
    }

    private double reach(double x, double y, double dx, double dy, double most) {
        double bx = upright.backX(x, y);
        double by = upright.backY(x, y);
        double ex = upright.backX(x + dx, y + dy) - bx;
        double ey = upright.backY(x + dx, y + dy) - by;
        return gauge.reach(bx, by, ex, ey, most);
    }

    /** In the middle of its ink; as wide as it is where it is thin. */
    private Stretch middle(Way best, List<Way> ways) {
        List<Way> like = ways.stream()
                .filter(v -> v.length() > ALIKE * best.length() && Math.abs(v.turn - best.turn) < MILD)
                .toList();
        double[] at = new double[4];
        for (Way v : like) {
            at[0] += v.a[0] / like.size();
            at[1] += v.a[1] / like.size();
            at[2] += v.b[0] / like.size();
            at[3] += v.b[1] / like.size();
        }
        Stretch one = new Stretch(at[0], at[1], at[2], at[3], 1);
        double[] widths = new double[(int) one.length()];
        for (int i = 0; i < widths.length; i++) {
            double[] p = one.at(i, 0);
            double[] q = one.at(i + 1, 0);
            double bx = upright.backX(p[0], p[1]);
            double by = upright.backY(p[0], p[1]);
            widths[i] = gauge.across(bx, by, upright.backX(q[0], q[1]) - bx, upright.backY(q[0], q[1]) - by);
        }
        Arrays.sort(widths);
        return new Stretch(at[0], at[1], at[2], at[3], Math.max(1, widths[widths.length / 5]));
    }
}
