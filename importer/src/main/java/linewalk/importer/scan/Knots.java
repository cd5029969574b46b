package linewalk.importer.scan;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import linewalk.importer.scan.Piece.Joint;

/**
 * Where two lines cross at a slant, thinning leaves two branchings with a bit between them. Once both lines are known to go
 * through, both branchings lie where they cross: apart, each on its own, the lines of one would cut those of the other.
 */
final class Knots {

    /** Longest bit, in widths of the ink there. */
    private static final double BIT = 1.5;

    private Knots() {}

    static void tie(Collection<Piece> pieces, Map<Piece, Line> lineOf) {
        for (Piece p : pieces) {
            if (!p.ring() && p.length() < BIT * p.a.thick) {
                tie(p, lineOf);
            }
        }
    }

    private static void tie(Piece bit, Map<Piece, Line> lineOf) {
        List<Line> ends = through(bit, bit.b, lineOf);
        List<Line> both =
                through(bit, bit.a, lineOf).stream().filter(ends::contains).toList();
        double[] x = both.size() == 2 ? both.get(0).straight.crossing(both.get(1).straight) : null;
        if (x != null && near(bit.a, x) && near(bit.b, x)) {
            move(bit.a, x);
            move(bit.b, x);
        }
    }

    private static List<Line> through(Piece bit, Joint j, Map<Piece, Line> lineOf) {
        Line own = lineOf.get(bit);
        return j.pieces.stream()
                .map(lineOf::get)
                .filter(l -> l != null && l != own)
                .distinct()
                .toList();
    }

    private static boolean near(Joint j, double[] x) {
        return Math.hypot(x[0] - j.x, x[1] - j.y) < BIT * j.thick;
    }

    private static void move(Joint j, double[] to) {
        j.x = to[0];
        j.y = to[1];
    }
}
