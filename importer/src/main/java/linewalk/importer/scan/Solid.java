package linewalk.importer.scan;

import java.util.List;

/** A filled shape: its outline in registered pixels; a dot is round. */
record Solid(List<double[]> outline, boolean dot) {

    /** A piece of skeleton that only says that the shape is there. */
    boolean swallows(Piece p) {
        int inside = 0;
        for (int i = 0; i < p.count(); i++) {
            inside += covers(p.xs[i], p.ys[i]) ? 1 : 0;
        }
        return !dot && inside > 0.8 * p.count();
    }

    boolean covers(double x, double y) {
        boolean in = false;
        for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
            double[] a = outline.get(i);
            double[] b = outline.get(j);
            if ((a[1] > y) != (b[1] > y) && x < (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) + a[0]) {
                in = !in;
            }
        }
        return in;
    }
}
