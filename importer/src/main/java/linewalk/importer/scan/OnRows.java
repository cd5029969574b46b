package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;

/** What is left of dashes that were no lines by themselves: a corner's bow, a chain's dot. It lies on its row's way. */
final class OnRows {

    private record Way(Straight straight, double from, double to) {

        double distance(double[] p) {
            double t = Math.max(from, Math.min(to, straight.along(p[0], p[1])));
            return Math.hypot(p[0] - straight.x() - t * straight.dx(), p[1] - straight.y() - t * straight.dy());
        }
    }

    private final List<Way> ways = new ArrayList<>();

    OnRows(List<DashRow> rows, RowEnds ends) {
        for (DashRow r : rows) {
            List<double[]> e = ends.of(r);
            Straight s = r.straight();
            double a = s.along(e.get(0)[0], e.get(0)[1]);
            double b = s.along(e.get(1)[0], e.get(1)[1]);
            ways.add(new Way(s, Math.min(a, b), Math.max(a, b)));
        }
    }

    /** Every point lies within the pen of some row. */
    boolean covers(List<double[]> points, double thick) {
        double near = 0.6 * thick + 1.5;
        return points.stream().allMatch(p -> ways.stream().anyMatch(w -> w.distance(p) < near));
    }
}
