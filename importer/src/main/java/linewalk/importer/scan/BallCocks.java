package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Valves drawn as two open triangles whose tips a ball covers. Between the ball and the triangles' sides thinning leaves
 * odd bits; one side that points at the ball's middle tells where the other three and both bases must be, and where they
 * are inked with paper inside they are two closed shapes.
 */
final class BallCocks {

    /** From the ball's middle to a base, in its radii. */
    private static final double NEAREST = 1.4;

    private static final double FARTHEST = 7;

    /** Half a base, in its distances from the middle. */
    private static final double SLIMMEST = 0.3;

    private static final double BROADEST = 1.3;

    private static final double INKED = 0.85;

    private static final int LOOK_PX = 2;

    private final Gauge gauge;
    private final Upright upright;
    private final List<List<double[]>> triangles = new ArrayList<>();

    BallCocks(Collection<Rounds.Curve> curves, Collection<Stretch> drawn, Gauge gauge, Upright upright) {
        this.gauge = gauge;
        this.upright = upright;
        for (Rounds.Curve c : curves) {
            if (c.closed()) {
                around(c.round(), drawn);
            }
        }
    }

    /** Both of each valve, the tip in the ball's middle first. */
    List<List<double[]>> triangles() {
        return triangles;
    }

    /** What is left of the stretches without the sides of the triangles. */
    List<Stretch> without(Collection<Stretch> drawn) {
        return drawn.stream()
                .filter(s -> triangles.stream().noneMatch(t -> side(s, t)))
                .toList();
    }

    private static boolean side(Stretch s, List<double[]> t) {
        for (int i = 0; i < 3; i++) {
            double[] a = t.get(i);
            double[] b = t.get((i + 1) % 3);
            if (new Stretch(a[0], a[1], b[0], b[1], s.widthPx() + 1).covers(s)) {
                return true;
            }
        }
        return false;
    }

    private void around(Round ball, Collection<Stretch> drawn) {
        for (Stretch s : drawn) {
            double a = Math.hypot(s.x0() - ball.x(), s.y0() - ball.y());
            double b = Math.hypot(s.x1() - ball.x(), s.y1() - ball.y());
            Stretch out = a < b ? s : s.turned();
            boolean points = s.length() > 1
                    && Math.max(a, b) < (FARTHEST + BROADEST) * ball.r()
                    && Math.min(a, b) < 2.5 * ball.r()
                    && s.aside(ball.x(), ball.y()) < 0.5 * ball.r() + s.widthPx();
            if (points && (found(ball, out, true) || found(ball, out, false))) {
                return;
            }
        }
    }

    private boolean found(Round ball, Stretch side, boolean standing) {
        double far = Math.abs(standing ? side.y1() - ball.y() : side.x1() - ball.x());
        double half = Math.abs(standing ? side.x1() - ball.x() : side.y1() - ball.y());
        if (far < NEAREST * ball.r() || far > FARTHEST * ball.r() || half < SLIMMEST * far || half > BROADEST * far) {
            return false;
        }
        double best = 0;
        double[] size = null;
        for (int df = -LOOK_PX; df <= LOOK_PX; df++) {
            for (int dh = -LOOK_PX; dh <= LOOK_PX; dh++) {
                double score = score(ball, far + df, half + dh, standing);
                if (score > best) {
                    best = score;
                    size = new double[] {far + df, half + dh};
                }
            }
        }
        if (size == null) {
            return false;
        }
        for (int way : new int[] {-1, 1}) {
            triangles.add(List.of(
                    new double[] {ball.x(), ball.y()},
                    at(ball, way * size[0], -size[1], standing),
                    at(ball, way * size[0], size[1], standing)));
        }
        return true;
    }

    private static double[] at(Round ball, double along, double across, boolean standing) {
        return standing
                ? new double[] {ball.x() + across, ball.y() + along}
                : new double[] {ball.x() + along, ball.y() + across};
    }

    /** Share of sides and bases that is inked; 0 where any of them is not, or where there is no paper inside. */
    private double score(Round ball, double far, double half, boolean standing) {
        double sum = 0;
        for (int way : new int[] {-1, 1}) {
            double[] left = at(ball, way * far, -half, standing);
            double[] right = at(ball, way * far, half, standing);
            double[] tip = {ball.x(), ball.y()};
            double base = inked(left, right, 1);
            double length = Math.hypot(far, half);
            double rim = 1 - 1.2 * ball.r() / length;
            double one = inked(left, tip, rim);
            double other = inked(right, tip, rim);
            double[] inside = at(ball, way * (0.4 * far + 0.6 * Math.max(ball.r(), 0.5 * far)), 0, standing);
            boolean paper = !gauge.ink(upright, inside[0], inside[1]);
            if (!paper || Math.min(base, Math.min(one, other)) < INKED) {
                return 0;
            }
            sum += base + one + other;
        }
        return sum;
    }

    /** Of a share of the way from one place to another. */
    private double inked(double[] a, double[] b, double share) {
        int n = Math.max(4, (int) (share * Math.hypot(b[0] - a[0], b[1] - a[1])));
        int on = 0;
        for (int i = 0; i <= n; i++) {
            double t = share * i / n;
            on += gauge.ink(upright, a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])) ? 1 : 0;
        }
        return (double) on / (n + 1);
    }
}
