package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Open arcs that go on smoothly from one to the next are one bend: a hose bends more in its middle than at its ends. */
final class Bends {

    private static final double NEAR_PX = 2.5;

    /** Cosine of the turn from arc to arc. */
    private static final double SMOOTH = 0.94;

    private Bends() {}

    /**
     * @param points of the whole bend
     * @param widthPx of its widest arc
     */
    record Bend(List<double[]> points, double widthPx) {

        private double[] end(boolean last) {
            return points.get(last ? points.size() - 1 : 0);
        }

        /** Out of its end. */
        private double[] way(boolean last) {
            int n = points.size();
            double[] p = points.get(last ? n - 2 : 1);
            double[] q = end(last);
            double length = Math.max(1e-9, Math.hypot(q[0] - p[0], q[1] - p[1]));
            return new double[] {(q[0] - p[0]) / length, (q[1] - p[1]) / length};
        }

        private Bend turned() {
            List<double[]> back = new ArrayList<>(points);
            Collections.reverse(back);
            return new Bend(back, widthPx);
        }

        private Bend with(Bend next) {
            List<double[]> all = new ArrayList<>(points);
            all.addAll(next.points.subList(1, next.points.size()));
            return new Bend(all, Math.max(widthPx, next.widthPx));
        }
    }

    static List<Bend> whole(List<Bend> arcs) {
        List<Bend> whole = new ArrayList<>(arcs);
        for (int i = 0; i < whole.size(); i++) {
            for (int k = i + 1; k < whole.size(); k++) {
                Bend both = joined(whole.get(i), whole.get(k), whole);
                if (both != null) {
                    whole.set(i, both);
                    whole.remove(k);
                    k = i;
                }
            }
        }
        return whole;
    }

    /** Null where they do not meet, or others meet them there. */
    private static Bend joined(Bend a, Bend b, List<Bend> all) {
        for (boolean aLast : new boolean[] {true, false}) {
            for (boolean bLast : new boolean[] {true, false}) {
                double[] p = a.end(aLast);
                double[] q = b.end(bLast);
                double[] out = a.way(aLast);
                double[] in = b.way(bLast);
                boolean meet = Math.hypot(p[0] - q[0], p[1] - q[1]) < NEAR_PX
                        && -(out[0] * in[0] + out[1] * in[1]) > SMOOTH
                        && all.stream().filter(o -> o != a && o != b).noneMatch(o -> ends(o, p));
                if (meet) {
                    return (aLast ? a : a.turned()).with(bLast ? b.turned() : b);
                }
            }
        }
        return null;
    }

    private static boolean ends(Bend o, double[] p) {
        return Math.hypot(o.end(true)[0] - p[0], o.end(true)[1] - p[1]) < NEAR_PX
                || Math.hypot(o.end(false)[0] - p[0], o.end(false)[1] - p[1]) < NEAR_PX;
    }
}
