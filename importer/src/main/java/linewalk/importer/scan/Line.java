package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;

/** Straight pieces that continue one another through joints: one line as drawn, in registered pixels. */
final class Line {

    final List<Piece> pieces = new ArrayList<>();
    Straight straight;
    double width;

    /** The line through all its pixels but those at its ends. */
    void fit() {
        Straight.Sums sums = new Straight.Sums();
        for (Piece p : pieces) {
            int trim = Math.min(p.count() / 4, 3);
            sums.add(Straight.sums(p.xs, p.ys, trim, p.count() - 1 - trim));
        }
        straight = sums.count() < 2 ? pieces.get(0).straight : sums.snapped();
    }

    /** Nothing else meets it anywhere. */
    boolean loose() {
        return pieces.stream().allMatch(p -> pieces.containsAll(p.a.pieces) && pieces.containsAll(p.b.pieces));
    }

    double length() {
        return pieces.stream().mapToDouble(Piece::length).sum();
    }

    /** How far it goes on from a place on it in a direction. */
    double reach(double x, double y, double dx, double dy) {
        double sign = Math.signum(dx * straight.dx() + dy * straight.dy());
        double start = straight.along(x, y);
        double most = 0;
        for (Piece p : pieces) {
            most = Math.max(most, sign * (along(p.a) - start));
            most = Math.max(most, sign * (along(p.b) - start));
        }
        return most;
    }

    /** Whether a place beside it lies between its ends. */
    boolean spans(double x, double y) {
        double t = straight.along(x, y);
        double[] a = end(false);
        double[] b = end(true);
        return t > straight.along(a[0], a[1]) - 2 && t < straight.along(b[0], b[1]) + 2;
    }

    /** One end, as its joints tell. */
    double[] end(boolean far) {
        double best = far ? -Double.MAX_VALUE : Double.MAX_VALUE;
        for (Piece p : pieces) {
            for (Piece.Joint j : new Piece.Joint[] {p.a, p.b}) {
                best = far ? Math.max(best, along(j)) : Math.min(best, along(j));
            }
        }
        return at(best);
    }

    double span() {
        double[] a = end(false);
        double[] b = end(true);
        return Math.hypot(b[0] - a[0], b[1] - a[1]);
    }

    double[] at(double t) {
        return new double[] {straight.x() + t * straight.dx(), straight.y() + t * straight.dy()};
    }

    double along(Piece.Joint j) {
        return straight.along(j.x, j.y);
    }
}
