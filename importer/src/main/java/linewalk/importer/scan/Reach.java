package linewalk.importer.scan;

import java.util.List;

/** Lines that meet a circle end on it, not at the branch that thinning left a little beside it. */
final class Reach {

    /** How far, in widths of the ink at the end. */
    private static final double FAR = 3;

    private final List<Round> circles;
    private final Gauge gauge;
    private final Upright upright;

    Reach(List<Rounds.Curve> curves, Gauge gauge, Upright upright) {
        this.circles = curves.stream()
                .filter(Rounds.Curve::closed)
                .map(Rounds.Curve::round)
                .toList();
        this.gauge = gauge;
        this.upright = upright;
    }

    /** The same straight stretch, its ends moved along it. */
    List<double[]> of(List<double[]> stretch) {
        double[] a = stretch.get(0);
        double[] b = stretch.get(1);
        return List.of(moved(b, a), moved(a, b));
    }

    private double[] moved(double[] from, double[] end) {
        double length = Math.hypot(end[0] - from[0], end[1] - from[1]);
        double dx = (end[0] - from[0]) / length;
        double dy = (end[1] - from[1]) / length;
        Straight line = new Straight(end[0], end[1], dx, dy);
        double far = Math.min(
                FAR * gauge.thickness((int) upright.backX(end[0], end[1]), (int) upright.backY(end[0], end[1])) + 2,
                0.5 * length + 8);
        double best = far;
        for (Round r : circles) {
            double aside = line.aside(r.x(), r.y());
            // only what points at the circle's middle parts ends on it
            if (aside < 0.6 * r.r()) {
                double on = line.along(r.x(), r.y()) - Math.sqrt(r.r() * r.r() - aside * aside);
                best = Math.abs(on) < Math.abs(best) && inked(end, dx, dy, on) ? on : best;
            }
        }
        return best == far ? end : new double[] {end[0] + best * dx, end[1] + best * dy};
    }

    private boolean inked(double[] end, double dx, double dy, double to) {
        int n = (int) Math.ceil(Math.abs(to));
        for (int i = 1; i < n; i++) {
            if (!gauge.ink(upright, end[0] + to * i / n * dx, end[1] + to * i / n * dy)) {
                return false;
            }
        }
        return true;
    }
}
