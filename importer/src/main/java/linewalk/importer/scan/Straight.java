package linewalk.importer.scan;

/** A straight line in registered pixels: a point on it and a unit direction. */
record Straight(double x, double y, double dx, double dy) {

    /** Sines of how far a line may be off level and still be meant so: a long one, and one of a few pixels. */
    private static final double LEAST_SNAPPED = Math.sin(Math.toRadians(0.7));

    private static final double MOST_SNAPPED = Math.sin(Math.toRadians(8));

    /** Least squares through the points from i to j, both included. */
    static Straight through(double[] xs, double[] ys, int i, int j) {
        return sums(xs, ys, i, j).line();
    }

    static Sums sums(double[] xs, double[] ys, int i, int j) {
        Sums s = new Sums();
        for (int k = i; k <= j; k++) {
            s.add(xs[k], ys[k]);
        }
        return s;
    }

    /** Moments of a cloud of points. */
    static final class Sums {
        private double n;
        private double x;
        private double y;
        private double xx;
        private double xy;
        private double yy;

        void add(double px, double py) {
            n++;
            x += px;
            y += py;
            xx += px * px;
            xy += px * py;
            yy += py * py;
        }

        void add(Sums o) {
            n += o.n;
            x += o.x;
            y += o.y;
            xx += o.xx;
            xy += o.xy;
            yy += o.yy;
        }

        double count() {
            return n;
        }

        Straight line() {
            double mx = x / n;
            double my = y / n;
            double sxx = xx / n - mx * mx;
            double sxy = xy / n - mx * my;
            double syy = yy / n - my * my;
            double angle = 0.5 * Math.atan2(2 * sxy, sxx - syy);
            return new Straight(mx, my, Math.cos(angle), Math.sin(angle));
        }

        /** Level or upright where the points would hardly know the difference. */
        Straight snapped() {
            Straight line = line();
            double off = Math.min(Math.abs(line.dx), Math.abs(line.dy));
            // thinning may step aside by a pixel anywhere: in the middle that turns the line most
            double known = Math.min(MOST_SNAPPED, 1.5 / n);
            if (off > Math.max(LEAST_SNAPPED, known)) {
                return line;
            }
            return Math.abs(line.dx) > Math.abs(line.dy)
                    ? new Straight(line.x, line.y, 1, 0)
                    : new Straight(line.x, line.y, 0, 1);
        }
    }

    double aside(double px, double py) {
        return Math.abs((px - x) * dy - (py - y) * dx);
    }

    double along(double px, double py) {
        return (px - x) * dx + (py - y) * dy;
    }

    /** Of the angle between, without sign. */
    double sine(Straight o) {
        return Math.abs(dx * o.dy - dy * o.dx);
    }

    /** Null where they all but run along each other. */
    double[] crossing(Straight o) {
        double det = dx * o.dy - dy * o.dx;
        if (Math.abs(det) < 0.15) {
            return null;
        }
        double t = ((o.x - x) * o.dy - (o.y - y) * o.dx) / det;
        return new double[] {x + t * dx, y + t * dy};
    }

    double[] nearest(double px, double py) {
        double t = along(px, py);
        return new double[] {x + t * dx, y + t * dy};
    }
}
