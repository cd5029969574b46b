package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;

/** A straight or round stretch of ink between two joints, in registered pixels. */
final class Piece {

    /** Where pieces meet or one ends. */
    static final class Joint {
        double x;
        double y;

        /** How thick the ink is here. */
        final double thick;

        final List<Piece> pieces = new ArrayList<>();

        Joint(double x, double y, double thick) {
            this.x = x;
            this.y = y;
            this.thick = thick;
        }
    }

    Joint a;
    Joint b;
    final double[] xs;
    final double[] ys;

    /** Null for a straight piece. */
    final Round round;

    /** Null for a round piece. */
    final Straight straight;

    Piece(double[] xs, double[] ys, Straight straight, Round round) {
        this.xs = xs;
        this.ys = ys;
        this.straight = straight;
        this.round = round;
    }

    int count() {
        return xs.length;
    }

    double length() {
        return Math.hypot(xs[count() - 1] - xs[0], ys[count() - 1] - ys[0]) + 1;
    }

    boolean ring() {
        return a == null;
    }

    Joint other(Joint j) {
        return j == a ? b : a;
    }

    void tie(Joint from, Joint to) {
        a = from;
        b = to;
        from.pieces.add(this);
        to.pieces.add(this);
    }

    void untie() {
        a.pieces.removeIf(p -> p == this);
        b.pieces.removeIf(p -> p == this);
    }

    /** Unit direction of a straight piece seen from one of its joints. */
    double[] from(Joint j) {
        double t = straight.along(xs[count() - 1], ys[count() - 1]) - straight.along(xs[0], ys[0]);
        double sign = t >= 0 == (j == a) ? 1 : -1;
        return new double[] {sign * straight.dx(), sign * straight.dy()};
    }
}
