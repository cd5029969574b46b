package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A way of pixels to the fewest straight and round pieces that stay within the raggedness of ink. Split where it strays
 * furthest, then neighbours that are one after all are put together again.
 */
final class Pieces {

    private static final int FEWEST_ROUND = 7;
    private static final double LEAST_SWEEP = Math.toRadians(22);

    /** Sine of the least turn at a corner. */
    private static final double CORNER = Math.sin(Math.toRadians(50));

    /** Tighter bows, in widths of ink, are corners that thinning rounded. */
    private static final double SMALLEST_ROUND = 1.5;

    private static final double LEAST_BOW = Math.toRadians(40);

    /** Rounds larger than this, in widths of ink, are straight lines on a wavy scan. */
    private static final double LARGEST_ROUND = 150;

    /** A dash that strays less than this share of the ink's thickness, or these pixels, from a line is straight. */
    private static final double FLAT = 0.3;

    private static final double FLAT_PX = 1.4;

    /** Longest hook, in thicknesses; between hooks so much less may a way stray. */
    private static final double HOOK = 0.6;

    /** How long an end may lead astray, and how far aside, in thicknesses. */
    private static final double RAGGED = 1.2;

    private static final double WITHIN = 0.45;

    /** Half a bar across a line, in thicknesses: longer ways are split at a hook, shorter and longer bows are sides of circles. */
    private static final double BAR = 2.4;

    private static final double LONGEST_BAR = 3.2;

    /** A longer bow at a line's end, in thicknesses, is no bent tip of it. */
    private static final double LONGEST_TIP = 6;

    private final double[] xs;
    private final double[] ys;
    private final double strayPx;
    private final double thick;
    private final boolean free;

    private record Fit(int from, int to, Straight straight, Round round) {}

    private Pieces(double[] xs, double[] ys, double thick, boolean free) {
        this.xs = xs;
        this.ys = ys;
        this.thick = thick;
        this.free = free;
        this.strayPx = Math.max(0.85, 0.2 * thick);
    }

    /**
     * @param thick how thick the ink is along the way, in pixels
     * @param free nothing meets the way at either end
     */
    static List<Piece> of(double[] xs, double[] ys, double thick, boolean free) {
        Pieces p = new Pieces(xs, ys, thick, free);
        List<Fit> fits = new ArrayList<>();
        p.split(0, xs.length - 1, fits);
        p.merge(fits);
        p.dropTiny(fits);
        return fits.stream().map(p::piece).toList();
    }

    private Piece piece(Fit f) {
        return new Piece(
                Arrays.copyOfRange(xs, f.from, f.to + 1),
                Arrays.copyOfRange(ys, f.from, f.to + 1),
                f.straight == null ? null : trimmed(f),
                f.round);
    }

    /** Of a closed way that starts at a corner: what lies around the start is part of the two sides that meet there. */
    static List<Piece> ofRing(double[] xs, double[] ys, double thick) {
        Pieces p = new Pieces(xs, ys, thick, false);
        List<Fit> fits = new ArrayList<>();
        p.split(0, xs.length - 1, fits);
        p.merge(fits);
        p.dropTiny(fits);
        p.dropStart(fits, 0);
        p.dropStart(fits, fits.size() - 1);
        return fits.stream().map(p::piece).toList();
    }

    private void dropStart(List<Fit> fits, int end) {
        int n = fits.size();
        Fit before = fits.get((end + n - 1) % n);
        Fit after = fits.get((end + 1) % n);
        if (n > 3 && rounded(before, fits.get(end), after)) {
            fits.remove(end);
        }
    }

    /** Without the rounded corners. */
    private Straight trimmed(Fit f) {
        int trim = f.to - f.from > 3 * thick ? (int) Math.round(0.5 * thick) : 0;
        return Straight.through(xs, ys, f.from + trim, f.to - trim);
    }

    private void split(int i, int j, List<Fit> out) {
        Fit one = fit(i, j);
        if (one != null || j - i < 3) {
            out.add(one != null ? one : new Fit(i, j, Straight.through(xs, ys, i, j), null));
            return;
        }
        int at = furthest(i, j);
        split(i, at, out);
        split(at, j, out);
    }

    private int furthest(int i, int j) {
        double dx = xs[j] - xs[i];
        double dy = ys[j] - ys[i];
        double length = Math.hypot(dx, dy);
        int best = (i + j) / 2;
        double most = -1;
        for (int k = i + 1; k < j; k++) {
            double off = length < 2
                    ? Math.hypot(xs[k] - xs[i], ys[k] - ys[i])
                    : Math.abs((xs[k] - xs[i]) * dy - (ys[k] - ys[i]) * dx) / length;
            if (off > most) {
                most = off;
                best = k;
            }
        }
        return best;
    }

    private Fit fit(int i, int j) {
        Straight line = Straight.through(xs, ys, i, j);
        double worst = 0;
        for (int k = i; k <= j && worst <= strayPx; k++) {
            worst = Math.max(worst, line.aside(xs[k], ys[k]));
        }
        double run = Math.hypot(xs[j] - xs[i], ys[j] - ys[i]);
        Round round = round(i, j);
        if (worst <= strayPx && run > 0.8 * (j - i) / 1.45 && !bowed(i, j, round, worst)) {
            return new Fit(i, j, line, null);
        }
        if (round != null && (free ? flat(line, i, j) : halfBar(i, j) && hooked(i, j))) {
            return new Fit(i, j, line, null);
        }
        return round == null ? null : new Fit(i, j, null, round);
    }

    private boolean flat(Straight line, int i, int j) {
        return worstAside(line, i, j) < slackPx() || hooked(i, j);
    }

    private boolean halfBar(int i, int j) {
        return j - i > BAR * thick && j - i < LONGEST_BAR * thick;
    }

    /** Thinning may lead either end into a corner of the ink; between the hooks the way is straight. */
    private boolean hooked(int i, int j) {
        int hook = (int) Math.round(HOOK * thick);
        return straight(i + hook, j - hook, 2 * hook) || ragged(i, j);
    }

    /** One end is led astray on a longer way, but stays in the ink of the straight rest. */
    private boolean ragged(int i, int j) {
        int astray = (int) Math.round(RAGGED * thick);
        return straight(i, j - astray, astray)
                        && worstAside(Straight.through(xs, ys, i, j - astray), i, j) < WITHIN * thick
                || straight(i + astray, j, astray)
                        && worstAside(Straight.through(xs, ys, i + astray, j), i, j) < WITHIN * thick;
    }

    private boolean straight(int i, int j, int least) {
        return j - i > least && worstAside(Straight.through(xs, ys, i, j), i, j) < HOOK * slackPx();
    }

    private double slackPx() {
        return Math.max(FLAT * thick, FLAT_PX);
    }

    /** Part of a small circle that others cut: short enough to pass for straight, but plainly rounder. */
    private boolean bowed(int i, int j, Round round, double worstStraight) {
        boolean whole = i == 0 && j == xs.length - 1;
        if (free || !whole || round == null || j - i > 3 * round.r() || (j - i) / round.r() < LEAST_BOW) {
            return false;
        }
        double worst = 0;
        for (int k = i; k <= j; k++) {
            worst = Math.max(worst, round.off(xs[k], ys[k]));
        }
        return worst < 0.6 * worstStraight;
    }

    private double worstAside(Straight line, int i, int j) {
        double worst = 0;
        for (int k = i; k <= j; k++) {
            worst = Math.max(worst, line.aside(xs[k], ys[k]));
        }
        return worst;
    }

    private Round round(int i, int j) {
        if (j - i < FEWEST_ROUND) {
            return null;
        }
        Round c = Round.through(xs, ys, i, j);
        if (c == null || c.r() > LARGEST_ROUND * thick || c.r() < SMALLEST_ROUND * thick) {
            return null;
        }
        for (int k = i; k <= j; k++) {
            if (c.off(xs[k], ys[k]) > strayPx) {
                return null;
            }
        }
        double sweep = 0;
        int step = Math.max(1, (j - i) / 8);
        for (int k = i; k + step <= j; k += step) {
            double turn = c.angle(xs[k + step], ys[k + step]) - c.angle(xs[k], ys[k]);
            sweep += Math.atan2(Math.sin(turn), Math.cos(turn));
        }
        return Math.abs(sweep) < LEAST_SWEEP || corner(i, j) || sharper(i, j, c) ? null : c;
    }

    /** Two sides of a corner, as short as the ink is rounded there, pass for an arc: they stay two where they fit better. */
    private boolean sharper(int i, int j, Round c) {
        int at = furthest(i, j);
        int inner = (int) Math.round(0.5 * thick);
        if (free || Math.min(at - i, j - at) < inner + 3) {
            return false;
        }
        Straight one = Straight.through(xs, ys, i, at - inner);
        Straight two = Straight.through(xs, ys, at + inner, j);
        double asCorner = 0;
        double asArc = 0;
        for (int k = i; k <= j; k++) {
            double aside = Math.min(one.aside(xs[k], ys[k]), two.aside(xs[k], ys[k]));
            asCorner += aside * aside;
            asArc += c.off(xs[k], ys[k]) * c.off(xs[k], ys[k]);
        }
        return one.sine(two) > CORNER && asCorner < asArc;
    }

    /** The corner of a dashed line, with arms hardly longer than the ink is thick, lies near a circle too. */
    private boolean corner(int i, int j) {
        if (!free || j - i < 4) {
            return false;
        }
        int at = furthest(i, j);
        int inner = (int) Math.round(0.5 * thick);
        if (Math.min(at - i, j - at) < 0.8 * thick + inner) {
            return false;
        }
        Straight one = Straight.through(xs, ys, i, at - inner);
        Straight two = Straight.through(xs, ys, at + inner, j);
        return one.sine(two) > CORNER
                && worstAside(one, i, at - inner) <= strayPx
                && worstAside(two, at + inner, j) <= strayPx;
    }

    private void merge(List<Fit> fits) {
        for (boolean changed = true; changed; ) {
            changed = false;
            for (int i = 0; i + 1 < fits.size(); i++) {
                Fit whole = fit(fits.get(i).from, fits.get(i + 1).to);
                if (whole != null && smooth(fits.get(i), fits.get(i + 1), whole)) {
                    fits.set(i, whole);
                    fits.remove(i + 1);
                    changed = true;
                    i--;
                }
            }
        }
    }

    /** Two sides of a corner with short arms lie near some circle too: they stay two where they meet sharply. */
    private boolean smooth(Fit a, Fit b, Fit whole) {
        if (whole.straight != null || a.straight == null || b.straight == null) {
            return true;
        }
        boolean sharp = Math.abs(a.straight.dx() * b.straight.dx() + a.straight.dy() * b.straight.dy())
                < Math.cos(Math.toRadians(52));
        int shorter = Math.min(a.to - a.from, b.to - b.from);
        return !sharp && shorter < 0.9 * whole.round.r() + 2;
    }

    /** The ink's inner side rounds a corner; what lies between two sides there is no side. */
    private void dropTiny(List<Fit> fits) {
        dropHook(fits, 0, 1);
        dropHook(fits, fits.size() - 1, fits.size() - 2);
        straighten(fits);
        for (int i = 1; i + 1 < fits.size(); i++) {
            Fit f = fits.get(i);
            Fit before = fits.get(i - 1);
            Fit after = fits.get(i + 1);
            int shorter = Math.min(before.to - before.from, after.to - after.from);
            boolean tiny = f.to - f.from < 0.9 * thick && f.straight != null && shorter > f.to - f.from;
            if (tiny || shorter > 2 && rounded(before, f, after) || cutOff(before, f, after)) {
                fits.remove(i--);
            }
        }
    }

    /** Both sides, led on, cross within the ink of the bow between them. */
    private boolean rounded(Fit before, Fit f, Fit after) {
        if (f.round == null || before.straight == null || after.straight == null || f.round.r() > 4 * thick) {
            return false;
        }
        double[] x = trimmed(before).crossing(trimmed(after));
        double least = Double.MAX_VALUE;
        for (int k = f.from; x != null && k <= f.to; k++) {
            least = Math.min(least, Math.hypot(xs[k] - x[0], ys[k] - x[1]));
        }
        // thinning cuts a sharp corner further off
        return least < 0.6 * thick / Math.max(0.3, Math.cos(turn(before, after) / 2)) + 1.2;
    }

    /** What is an arc only by the ink that rounds the corner beside it is a side. */
    private void straighten(List<Fit> fits) {
        int rounding = (int) Math.round(0.9 * thick) + 1;
        for (int i = 0; i < fits.size(); i++) {
            Fit f = fits.get(i);
            Fit before = i > 0 ? fits.get(i - 1) : null;
            Fit after = i + 1 < fits.size() ? fits.get(i + 1) : null;
            Fit side = f.round == null
                    ? null
                    : new Fit(
                            f.from + (before != null && before.straight != null ? rounding : 0),
                            f.to - (after != null && after.straight != null ? rounding : 0),
                            null,
                            null);
            if (side != null && side.to - side.from >= 3 && side.to - side.from < f.to - f.from) {
                Straight line = Straight.through(xs, ys, side.from, side.to);
                if (worstAside(line, side.from, side.to) <= strayPx && corner(line, before) && corner(line, after)) {
                    fits.set(i, new Fit(side.from, side.to, line, null));
                }
            }
        }
    }

    private boolean corner(Straight line, Fit beside) {
        return beside == null || beside.straight != null && line.sine(trimmed(beside)) > CORNER;
    }

    /** A short side across a sharp corner, where the ink of both sides is one: they cross beyond it, as far as ink goes. */
    private boolean cutOff(Fit before, Fit f, Fit after) {
        boolean sides = f.straight != null && before.straight != null && after.straight != null;
        int length = f.to - f.from;
        if (!sides
                || length > 1.6 * thick + 1
                || Math.min(before.to - before.from, after.to - after.from) < 1.5 * length) {
            return false;
        }
        double turn = turn(before, after);
        double[] x = trimmed(before).crossing(trimmed(after));
        if (x == null || turn < Math.PI / 2) {
            return false;
        }
        double least = Math.min(
                Math.hypot(xs[f.from] - x[0], ys[f.from] - x[1]), Math.hypot(xs[f.to] - x[0], ys[f.to] - x[1]));
        return least < 0.75 * thick / Math.max(0.2, Math.cos(turn / 2)) + 1.5;
    }

    /** By how much the way turns from one to the other, 0 to pi. */
    private double turn(Fit before, Fit after) {
        double ax = xs[before.to] - xs[before.from];
        double ay = ys[before.to] - ys[before.from];
        double bx = xs[after.to] - xs[after.from];
        double by = ys[after.to] - ys[after.from];
        return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
    }

    /** Thinning leaves a hook where a line ends or meets another. */
    private void dropHook(List<Fit> fits, int end, int neighbour) {
        if (fits.size() < 2) {
            return;
        }
        Fit f = fits.get(end);
        Fit n = fits.get(neighbour);
        int length = f.to - f.from;
        if (n.straight != null
                && n.to - n.from > 3 * length
                && (length < 0.9 * thick
                        || length < LONGEST_TIP * thick && worstAside(trimmed(n), f.from, f.to) < WITHIN * thick)) {
            fits.remove(end);
        }
    }
}
