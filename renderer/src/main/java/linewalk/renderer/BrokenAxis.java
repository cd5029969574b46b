package linewalk.renderer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One axis of a broken view: stretches that are kept, at a scale, and empty ones that are pulled together. */
final class BrokenAxis {

    /** What a stretch left out becomes. */
    static final double GAP_PT = 16;

    /**
     * A kept stretch.
     *
     * @param viewPt where it starts in the view
     */
    record Kept(double fromPt, double toPt, double viewPt) {}

    final List<Kept> kept = new ArrayList<>();
    private final double scale;

    /**
     * Needs at least one stretch.
     *
     * @param stretches pairs of from and to in the original's points, in any order
     * @param leastPt shorter stretches are not left out
     */
    BrokenAxis(List<double[]> stretches, double scale, double leastPt) {
        this.scale = scale;
        List<double[]> sorted = new ArrayList<>(stretches);
        sorted.sort(Comparator.comparingDouble(s -> s[0]));
        double from = sorted.get(0)[0];
        double to = sorted.get(0)[1];
        for (double[] s : sorted) {
            if (s[0] - to > leastPt) {
                keep(from, to);
                from = s[0];
                to = s[1];
            }
            to = Math.max(to, s[1]);
        }
        keep(from, to);
    }

    private void keep(double from, double to) {
        double view = kept.isEmpty() ? 0 : end(last()) + GAP_PT;
        kept.add(new Kept(from, to, view));
    }

    private Kept last() {
        return kept.get(kept.size() - 1);
    }

    private double end(Kept k) {
        return k.viewPt() + (k.toPt() - k.fromPt()) * scale;
    }

    double lengthPt() {
        return end(last());
    }

    double endPt(Kept k) {
        return end(k);
    }

    /** To the view; inside a stretch left out evenly over its gap. */
    double map(double at) {
        Kept before = null;
        for (Kept k : kept) {
            if (at < k.fromPt() && before != null) {
                double share = (at - before.toPt()) / (k.fromPt() - before.toPt());
                return end(before) + share * GAP_PT;
            }
            if (at <= k.toPt() || k.equals(last())) {
                return k.viewPt() + (at - k.fromPt()) * scale;
            }
            before = k;
        }
        throw new IllegalStateException("an axis without stretches");
    }

    boolean keeps(double at) {
        return kept.stream().anyMatch(k -> at >= k.fromPt() - 0.01 && at <= k.toPt() + 0.01);
    }
}
