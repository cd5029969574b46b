package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The arrow across a throttle. Thinning leaves of its shaft only what neither walls nor line hide, and that askew: so its
 * ink is followed from the waist both ways instead.
 */
final class Across {

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

    private final Gauge gauge;
    private final Upright upright;

    Across(Gauge gauge, Upright upright) {
        this.gauge = gauge;
        this.upright = upright;
    }

    private record Way(double turn, double[] a, double[] b) {
        double length() {
            return Math.hypot(b[0] - a[0], b[1] - a[1]);
        }
    }

    /** Nothing where no ink leads across. */
    Optional<Stretch> of(Waists.Waist w) {
        double[] wallEnd = w.walls().get(0).get(0);
        double least = OUT * w.flow().aside(wallEnd[0], wallEnd[1]);
        List<Way> ways = new ArrayList<>();
        for (int deg = FLATTEST; deg <= STEEPEST; deg++) {
            for (double beside = -BESIDE * w.half(); beside <= BESIDE * w.half(); beside += 1) {
                way(w, Math.toRadians(deg), beside, least).ifPresent(ways::add);
                way(w, -Math.toRadians(deg), beside, least).ifPresent(ways::add);
            }
        }
        return ways.stream()
                .max(java.util.Comparator.comparingDouble(Way::length))
                .map(best -> middle(best, ways));
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
