package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Straight pieces along which the pen changes, cut where it does: a symbol's own thin port line and the pipe that meets it. */
final class PenChange {

    /** Two pens differ by this share of the thicker one (neighbours in ISO 128 by 0.3), and by a pixel. */
    private static final double DIFFERENT = 0.22;

    private static final int STEP_PX = 2;

    private final Gauge gauge;
    private final Upright upright;

    PenChange(Gauge gauge, Upright upright) {
        this.gauge = gauge;
        this.upright = upright;
    }

    List<Piece> cut(Piece p) {
        if (p.straight == null) {
            return List.of(p);
        }
        double[] widths = widths(p);
        int at = change(widths);
        if (at < 0) {
            return List.of(p);
        }
        int k = Math.min(p.count() - 2, at * STEP_PX);
        List<Piece> out = new ArrayList<>(cut(part(p, 0, k)));
        out.addAll(cut(part(p, k, p.count() - 1)));
        return out;
    }

    private static Piece part(Piece p, int from, int to) {
        return new Piece(
                Arrays.copyOfRange(p.xs, from, to + 1), Arrays.copyOfRange(p.ys, from, to + 1), p.straight, null);
    }

    private double[] widths(Piece p) {
        double[] out = new double[p.count() / STEP_PX];
        double dx = upright.backX(p.straight.dx(), p.straight.dy()) - upright.backX(0, 0);
        double dy = upright.backY(p.straight.dx(), p.straight.dy()) - upright.backY(0, 0);
        for (int i = 0; i < out.length; i++) {
            double x = p.xs[i * STEP_PX];
            double y = p.ys[i * STEP_PX];
            out[i] = Math.min(60, gauge.across(upright.backX(x, y), upright.backY(x, y), dx, dy));
        }
        return out;
    }

    /** Where the medians before and after differ most; -1 where they hardly do. */
    private static int change(double[] w) {
        int least = 4;
        int best = -1;
        double most = 0;
        double[] sum = new double[w.length + 1];
        double[] capped = capped(w);
        for (int i = 0; i < w.length; i++) {
            sum[i + 1] = sum[i] + capped[i];
        }
        for (int i = least; i + least <= w.length; i++) {
            double a = sum[i] / i;
            double b = (sum[w.length] - sum[i]) / (w.length - i);
            double gain = (a - b) * (a - b) * i * (w.length - i);
            if (gain > most) {
                most = gain;
                best = i;
            }
        }
        if (best < 0) {
            return -1;
        }
        double before = median(w, 0, best);
        double after = median(w, best, w.length);
        double thin = Math.min(before, after);
        boolean longEnough = Math.min(best, w.length - best) * STEP_PX > 2.2 * Math.max(before, after);
        return longEnough && Math.abs(before - after) > Math.max(1.2, DIFFERENT * Math.max(before, after)) && thin > 1
                ? best
                : -1;
    }

    /** Lines that cross make no pen. */
    private static double[] capped(double[] w) {
        double middle = median(w, 0, w.length);
        return Arrays.stream(w).map(x -> Math.min(x, 2.2 * middle)).toArray();
    }

    private static double median(double[] w, int from, int to) {
        double[] part = Arrays.copyOfRange(w, from, to);
        Arrays.sort(part);
        return part.length == 0 ? 0 : part[part.length / 2];
    }
}
