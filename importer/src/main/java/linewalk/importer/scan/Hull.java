package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The outline of a filled shape: its convex hull, brought down to its corners. */
final class Hull {

    private static final double ROUND = 0.79;

    private Hull() {}

    /** Corners of the region's pixels, in pixels of the page. */
    static List<double[]> around(Opened o, boolean[] region) {
        List<double[]> points = new ArrayList<>();
        for (int y = 0; y < o.height; y++) {
            int first = -1;
            int last = -1;
            for (int x = 0; x < o.width; x++) {
                if (region[y * o.width + x]) {
                    first = first < 0 ? x : first;
                    last = x;
                }
            }
            if (first >= 0) {
                for (int dy = 0; dy <= 1; dy++) {
                    points.add(new double[] {o.x0 + first, o.y0 + y + dy});
                    points.add(new double[] {o.x0 + last + 1, o.y0 + y + dy});
                }
            }
        }
        points.sort(Comparator.comparingDouble((double[] p) -> p[0]).thenComparingDouble(p -> p[1]));
        List<double[]> hull = half(points);
        java.util.Collections.reverse(points);
        List<double[]> other = half(points);
        hull.addAll(other);
        return hull;
    }

    private static List<double[]> half(List<double[]> points) {
        List<double[]> hull = new ArrayList<>();
        for (double[] p : points) {
            while (hull.size() > 1 && cross(hull.get(hull.size() - 2), hull.get(hull.size() - 1), p) <= 0) {
                hull.remove(hull.size() - 1);
            }
            hull.add(p);
        }
        hull.remove(hull.size() - 1);
        return hull;
    }

    private static double cross(double[] a, double[] b, double[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    }

    static double area(List<double[]> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            double[] a = ring.get(i);
            double[] b = ring.get((i + 1) % ring.size());
            sum += a[0] * b[1] - b[0] * a[1];
        }
        return Math.abs(sum) / 2;
    }

    static double length(List<double[]> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            sum += distance(ring.get(i), ring.get((i + 1) % ring.size()));
        }
        return sum;
    }

    private static double distance(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }

    /** It all but fills the circle through its furthest points. */
    static boolean round(List<double[]> hull, double area) {
        double x0 = hull.stream().mapToDouble(p -> p[0]).min().orElse(0);
        double x1 = hull.stream().mapToDouble(p -> p[0]).max().orElse(0);
        double y0 = hull.stream().mapToDouble(p -> p[1]).min().orElse(0);
        double y1 = hull.stream().mapToDouble(p -> p[1]).max().orElse(0);
        double r = hull.stream()
                .mapToDouble(p -> Math.hypot(p[0] - (x0 + x1) / 2, p[1] - (y0 + y1) / 2))
                .max()
                .orElse(0);
        return area > ROUND * Math.PI * r * r;
    }

    /** The hull without its smallest bends. */
    static List<double[]> few(List<double[]> hull) {
        return simplified(hull, 0.06 * Math.sqrt(area(hull)) + 0.6);
    }

    /** Drops the corner that changes the outline least, as long as that is little. */
    private static List<double[]> simplified(List<double[]> ring, double within) {
        List<double[]> out = new ArrayList<>(ring);
        while (out.size() > 3) {
            int best = -1;
            double least = within;
            for (int i = 0; i < out.size(); i++) {
                double[] a = out.get((i + out.size() - 1) % out.size());
                double[] c = out.get((i + 1) % out.size());
                double off = Math.abs(cross(a, out.get(i), c)) / Math.max(1e-9, distance(a, c));
                if (off < least) {
                    least = off;
                    best = i;
                }
            }
            if (best < 0) {
                return out;
            }
            out.remove(best);
        }
        return out;
    }
}
