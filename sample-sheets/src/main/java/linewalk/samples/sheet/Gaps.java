package linewalk.samples.sheet;

import java.util.ArrayList;
import java.util.List;
import linewalk.samples.symbol.Spot;

/** Cuts lines where a text stands in them. */
final class Gaps {
    private Gaps() {}

    /** The pieces left of a polyline; gaps are from and to along it, in rising order; empty gaps cut nothing. */
    static List<List<Spot>> cut(List<Spot> points, List<double[]> gaps) {
        List<List<Spot>> pieces = new ArrayList<>();
        double from = 0;
        for (double[] gap : gaps) {
            if (gap[1] > gap[0]) {
                pieces.add(part(points, from, gap[0]));
                from = gap[1];
            }
        }
        pieces.add(part(points, from, Double.MAX_VALUE));
        return pieces;
    }

    private static List<Spot> part(List<Spot> points, double from, double to) {
        List<Spot> out = new ArrayList<>();
        double at = 0;
        for (int i = 1; i < points.size(); i++) {
            Spot a = points.get(i - 1);
            Spot b = points.get(i);
            double next = at + distance(a, b);
            if (next > from && at < to) {
                if (out.isEmpty()) {
                    out.add(between(a, b, Math.max(0, from - at) / (next - at)));
                }
                out.add(between(a, b, Math.min(next, to) < next ? (to - at) / (next - at) : 1));
            }
            at = next;
        }
        return out;
    }

    private static Spot between(Spot a, Spot b, double t) {
        return new Spot(a.x() + (b.x() - a.x()) * t, a.y() + (b.y() - a.y()) * t);
    }

    static double distance(Spot a, Spot b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }
}
