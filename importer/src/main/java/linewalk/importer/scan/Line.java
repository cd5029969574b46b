package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;

/** Straight pieces that continue one another through joints: one line as drawn, in registered pixels. */
final class Line {

    final List<Piece> pieces = new ArrayList<>();
    Straight straight;
    double width;

    /** Its ends along the line, once solved. */
    double from;

    double to;

    /** The line through all its pixels but those at its ends. */
    void fit() {
        Straight.Sums sums = new Straight.Sums();
        double length = 0;
        for (Piece p : pieces) {
            int trim = Math.min(p.count() / 4, 3);
            sums.add(Straight.sums(p.xs, p.ys, trim, p.count() - 1 - trim));
            length += p.length();
        }
        straight = sums.count() < 2 ? pieces.get(0).straight : sums.snapped(length);
    }

    double length() {
        return pieces.stream().mapToDouble(Piece::length).sum();
    }

    double[] at(double t) {
        return new double[] {straight.x() + t * straight.dx(), straight.y() + t * straight.dy()};
    }

    double along(Piece.Joint j) {
        return straight.along(j.x, j.y);
    }
}
