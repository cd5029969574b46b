package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.importer.page.Near;

/**
 * Blobs that are dashes: bars that follow one another end to end, straight on or around a ring. Beside lettering such a
 * dash looks like a figure one.
 */
final class Dashes {

    /** Of a bar, in its widths; and its width in those of thick lines. */
    private static final double LEAST_LONG = 2.5;

    private static final double MOST_WIDE = 1.3;

    /** Longest gap, in lengths of the longer dash beside it: lines of text stand further apart. */
    private static final double GAP = 0.9;

    /** Least cosine of the turn from a dash to the gap after it, and of that from dash to dash. */
    private static final double ONWARD = Math.cos(Math.toRadians(25));

    private static final double TURN = Math.cos(Math.toRadians(40));

    /** So many dashes at least: fewer may be letters. */
    private static final int MOST_LETTERS = 4;

    /** Of two dashes of one line, the longer to the other. */
    private static final double ONE_LENGTH = 1.6;

    /** A bar by its ends. */
    private record Bar(Blob blob, double[] a, double[] b, double length) {

        static Bar of(Blob blob, double thickPx) {
            double n = 0;
            double[] sum = new double[5];
            int[] r = blob.runs();
            for (int i = 0; i < r.length; i += 3) {
                for (int x = r[i + 1]; x < r[i + 2]; x++) {
                    double dx = x - blob.x0();
                    double dy = r[i] - blob.y0();
                    n++;
                    sum[0] += dx;
                    sum[1] += dy;
                    sum[2] += dx * dx;
                    sum[3] += dx * dy;
                    sum[4] += dy * dy;
                }
            }
            double mx = sum[0] / n;
            double my = sum[1] / n;
            double sxx = sum[2] / n - mx * mx;
            double sxy = sum[3] / n - mx * my;
            double syy = sum[4] / n - my * my;
            double spread = Math.hypot(sxx - syy, 2 * sxy);
            double length = Math.sqrt(6 * (sxx + syy + spread));
            double width = Math.sqrt(Math.max(0, 6 * (sxx + syy - spread)));
            if (width > MOST_WIDE * thickPx || length < LEAST_LONG * Math.max(1, width)) {
                return null;
            }
            double angle = 0.5 * Math.atan2(2 * sxy, sxx - syy);
            double dx = Math.cos(angle) * length / 2;
            double dy = Math.sin(angle) * length / 2;
            double x = blob.x0() + mx;
            double y = blob.y0() + my;
            return new Bar(blob, new double[] {x - dx, y - dy}, new double[] {x + dx, y + dy}, length);
        }

        Box box() {
            return new Box(Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[0], b[0]), Math.max(a[1], b[1]));
        }

        double[] end(boolean far) {
            return far ? b : a;
        }
    }

    /** A bar and the end at which the next one follows. */
    private record Tail(Bar bar, boolean far) {

        double[] onward() {
            double[] p = bar.end(far);
            double[] q = bar.end(!far);
            return new double[] {(p[0] - q[0]) / bar.length, (p[1] - q[1]) / bar.length};
        }
    }

    private final List<Bar> bars = new ArrayList<>();
    private final Near<Bar> near;
    private final Map<Bar, Bar[]> next = new IdentityHashMap<>();

    private Dashes(Collection<Blob> blobs, Thickness thickness) {
        for (Blob b : blobs) {
            Bar bar = b.ink() > 1.6 * thickness.thickPx() * b.longer() ? null : Bar.of(b, thickness.thickPx());
            if (bar != null) {
                bars.add(bar);
            }
        }
        near = new Near<>(bars, Bar::box);
    }

    /** Those that end near one of their own length, straight on or around a corner: no dots of chain lines and no specks. */
    static Set<Blob> ofOneLength(Collection<Blob> blobs, Thickness thickness) {
        Dashes all = new Dashes(blobs, thickness);
        Set<Blob> dashes = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Bar b : all.bars) {
            double reach = GAP * b.length;
            Box box = b.box();
            for (Bar o : all.near.touching(box.grow(reach))) {
                boolean oneLength = Math.max(b.length, o.length) < ONE_LENGTH * Math.min(b.length, o.length);
                if (o != b && oneLength && apart(b, o) < reach) {
                    dashes.add(b.blob);
                }
            }
        }
        return dashes;
    }

    /** From end to end. */
    private static double apart(Bar b, Bar o) {
        double least = Double.MAX_VALUE;
        for (double[] p : new double[][] {b.a, b.b}) {
            for (double[] q : new double[][] {o.a, o.b}) {
                least = Math.min(least, Math.hypot(p[0] - q[0], p[1] - q[1]));
            }
        }
        return least;
    }

    static Set<Blob> of(Collection<Blob> blobs, Thickness thickness, Bits ink) {
        Dashes all = new Dashes(blobs, thickness);
        all.bars.forEach(
                b -> all.next.put(b, new Bar[] {all.follower(new Tail(b, false)), all.follower(new Tail(b, true))}));
        Set<Blob> dashes = Collections.newSetFromMap(new IdentityHashMap<>());
        Set<Bar> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Bar b : all.bars) {
            List<Bar> chain = seen.contains(b) ? List.of() : all.chain(b, seen);
            if (chain.size() > MOST_LETTERS) {
                chain.forEach(c -> dashes.add(c.blob));
            }
        }
        blobs.forEach(
                b -> DashCorner.of(b, MOST_WIDE * thickness.thickPx()).ifPresent(c -> all.around(b, c, ink, dashes)));
        return dashes;
    }

    /** A corner that dashes lead to on both sides, or on one where it leads on to other line work; with these dashes. */
    private void around(Blob blob, DashCorner c, Bits ink, Set<Blob> dashes) {
        double[] at = {c.x(), c.y()};
        Bar level = new Bar(blob, at, new double[] {c.acrossX(), c.y()}, Math.abs(c.acrossX() - c.x()));
        Bar upright = new Bar(blob, at, new double[] {c.x(), c.downY()}, Math.abs(c.downY() - c.y()));
        List<Bar> one = after(level);
        List<Bar> other = after(upright);
        boolean both = !one.isEmpty() && !other.isEmpty();
        if (both || goesOn(one, at, ink) && leadsOn(upright, ink) || goesOn(other, at, ink) && leadsOn(level, ink)) {
            dashes.add(blob);
            one.forEach(b -> dashes.add(b.blob));
            other.forEach(b -> dashes.add(b.blob));
        }
    }

    /** More than one dash, or one that leads on away from the corner. */
    private static boolean goesOn(List<Bar> dashes, double[] corner, Bits ink) {
        if (dashes.size() != 1) {
            return !dashes.isEmpty();
        }
        Bar b = dashes.get(0);
        boolean ahead =
                Math.hypot(b.a[0] - corner[0], b.a[1] - corner[1]) < Math.hypot(b.b[0] - corner[0], b.b[1] - corner[1]);
        return leadsOn(ahead ? b : new Bar(b.blob, b.b, b.a, b.length), ink);
    }

    private List<Bar> after(Bar limb) {
        Bar next = follower(new Tail(limb, true));
        return next == null ? List.of() : chain(next, Collections.newSetFromMap(new IdentityHashMap<>()));
    }

    /** Over a gap shorter than itself to more ink. */
    private static boolean leadsOn(Bar limb, Bits ink) {
        double[] on = new Tail(limb, true).onward();
        for (int i = 2; i < GAP * limb.length; i++) {
            if (ink.get((int) (limb.b[0] + i * on[0]), (int) (limb.b[1] + i * on[1]))) {
                return true;
            }
        }
        return false;
    }

    private Bar follower(Tail tail) {
        double[] p = tail.bar.end(tail.far);
        double[] on = tail.onward();
        double reach = 2 * GAP * tail.bar.length;
        Bar best = null;
        double least = Double.MAX_VALUE;
        for (Bar o : near.touching(new Box(p[0] - reach, p[1] - reach, p[0] + reach, p[1] + reach))) {
            for (boolean far : new boolean[] {false, true}) {
                double[] q = o.end(far);
                double gap = Math.hypot(q[0] - p[0], q[1] - p[1]);
                boolean alike = o != tail.bar && gap > 1 && gap < GAP * Math.max(o.length, tail.bar.length);
                if (alike
                        && gap < least
                        && leadsOn(on, new double[] {(q[0] - p[0]) / gap, (q[1] - p[1]) / gap}, o, far)) {
                    least = gap;
                    best = o;
                }
            }
        }
        return best;
    }

    /** From the bar over the gap to the other bar the way hardly turns. */
    private static boolean leadsOn(double[] on, double[] over, Bar o, boolean far) {
        double[] away = new Tail(o, !far).onward();
        return dot(on, over) > ONWARD && dot(over, away) > ONWARD && dot(on, away) > TURN;
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1];
    }

    /** Those that follow one another both ways. */
    private List<Bar> chain(Bar start, Set<Bar> seen) {
        List<Bar> chain = new ArrayList<>(List.of(start));
        seen.add(start);
        for (int i = 0; i < chain.size(); i++) {
            for (Bar n : next.get(chain.get(i))) {
                boolean mutual = n != null && (next.get(n)[0] == chain.get(i) || next.get(n)[1] == chain.get(i));
                if (mutual && seen.add(n)) {
                    chain.add(n);
                }
            }
        }
        return chain;
    }
}
