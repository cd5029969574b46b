package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Segment;

/** Arrows among letters, which no letter reader knows: a shaft over the sign's whole width, all else near one of its ends. */
final class ArrowSign {

    /** Shares of the sign's width. */
    private static final double HEAD = 0.5;

    private static final double BARB = 0.12;

    /** In heights of a capital. */
    private static final double SHORTEST = 0.45;

    private static final double LEVEL = 0.06;

    private static final String RIGHT = "\u2192";
    private static final String LEFT = "\u2190";

    private ArrowSign() {}

    /** The arrow's character, or null. */
    static String of(Placed sign, Row row) {
        double width = sign.widthPt();
        if (width < SHORTEST * row.heightPt() || sign.heightPt() < 0.15 * row.heightPt()) {
            return null;
        }
        int way = ArrowProfile.of(sign, row);
        if (way != 0) {
            return way > 0 ? RIGHT : LEFT;
        }
        List<double[]> head = new ArrayList<>();
        double from = Double.MAX_VALUE;
        double to = -Double.MAX_VALUE;
        double middle = (sign.v0() + sign.v1()) / 2;
        for (Piece piece : sign.pieces()) {
            for (Segment s : piece.segments()) {
                double[] a = seen(s.a(), sign, row, middle);
                double[] b = seen(s.b(), sign, row, middle);
                if (level(a, row) && level(b, row)) {
                    from = Math.min(from, Math.min(a[0], b[0]));
                    to = Math.max(to, Math.max(a[0], b[0]));
                } else {
                    head.add(level(a, row) ? b : a);
                    head.add(level(b, row) ? a : b);
                }
            }
        }
        if (from > 0.05 * width || to < 0.95 * width || head.isEmpty()) {
            return null;
        }
        if (points(head, width, false)) {
            return RIGHT;
        }
        return points(head, width, true) ? LEFT : null;
    }

    private static double[] seen(Point p, Placed sign, Row row, double middle) {
        double up = row.baselinePt() - row.turn().down(p);
        return new double[] {
            row.turn().along(p) - row.lean() * up - sign.u0(), row.turn().down(p) - middle
        };
    }

    private static boolean level(double[] p, Row row) {
        return Math.abs(p[1]) < LEVEL * row.heightPt();
    }

    /** The barbs lie behind the tip, above and below the shaft, and not at its far end. */
    private static boolean points(List<double[]> head, double width, boolean left) {
        boolean above = false;
        boolean below = false;
        for (double[] p : head) {
            double behind = left ? p[0] : width - p[0];
            if (behind > HEAD * width || behind < BARB * width) {
                return false;
            }
            above |= p[1] < 0;
            below |= p[1] > 0;
        }
        return above && below;
    }
}
