package linewalk.importer.scan;

/** A circle in registered pixels. */
record Round(double x, double y, double r) {

    /** Least squares (of the squared radius) through the points from i to j; null for points in a straight line. */
    static Round through(double[] xs, double[] ys, int i, int j) {
        Sums s = new Sums(xs[(i + j) / 2], ys[(i + j) / 2]);
        for (int k = i; k <= j; k++) {
            s.add(xs[k], ys[k]);
        }
        return s.circle();
    }

    /** Moments around an origin near the points. */
    static final class Sums {
        private final double ox;
        private final double oy;
        private double n;
        private double sx;
        private double sy;
        private double sxx;
        private double sxy;
        private double syy;
        private double sxz;
        private double syz;
        private double sz;

        Sums(double ox, double oy) {
            this.ox = ox;
            this.oy = oy;
        }

        void add(double px, double py) {
            double x = px - ox;
            double y = py - oy;
            double z = x * x + y * y;
            n++;
            sx += x;
            sy += y;
            sxx += x * x;
            sxy += x * y;
            syy += y * y;
            sxz += x * z;
            syz += y * z;
            sz += z;
        }

        Round circle() {
            double a = n * sxx - sx * sx;
            double b = n * sxy - sx * sy;
            double c = n * syy - sy * sy;
            double d = 0.5 * (n * sxz - sx * sz);
            double e = 0.5 * (n * syz - sy * sz);
            double det = a * c - b * b;
            if (n < 3 || Math.abs(det) < 1e-6 * a * c + 1e-9) {
                return null;
            }
            double x = (d * c - b * e) / det;
            double y = (a * e - b * d) / det;
            double r = Math.sqrt(x * x + y * y + (sz - 2 * x * sx - 2 * y * sy) / n);
            return new Round(x + ox, y + oy, r);
        }
    }

    double off(double px, double py) {
        return Math.abs(Math.hypot(px - x, py - y) - r);
    }

    double angle(double px, double py) {
        return Math.atan2(py - y, px - x);
    }
}
