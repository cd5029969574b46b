package linewalk.importer.stroke;

import java.util.Arrays;
import linewalk.drawing.Point;
import linewalk.importer.page.Segment;

/**
 * An arrow by its outline, painted or drawn: cut across, it is thin over the shaft, widens at once where the head begins
 * and narrows towards the tip, all of it on one axis.
 */
final class ArrowProfile {

    private static final int CUTS = 40;

    /** Shares of the widest cut. */
    private static final double THIN = 0.4;

    private static final double ASIDE = 0.12;

    /** Share of the cuts that the shaft must have at least. */
    private static final double SHAFT = 0.45;

    private final double[] top = new double[CUTS];
    private final double[] bottom = new double[CUTS];

    private ArrowProfile(Placed sign, Row row) {
        Arrays.fill(top, Double.MAX_VALUE);
        Arrays.fill(bottom, -Double.MAX_VALUE);
        for (Piece piece : sign.pieces()) {
            for (Segment s : piece.segments()) {
                int n = (int) Math.ceil(s.lengthPt() / sign.widthPt() * CUTS * 2) + 1;
                for (int i = 0; i <= n; i++) {
                    note(s.at((double) i / n), sign, row);
                }
            }
        }
    }

    private void note(Point p, Placed sign, Row row) {
        double down = row.turn().down(p);
        double along = row.turn().along(p) - row.lean() * (row.baselinePt() - down) - sign.u0();
        int cut = (int) Math.max(0, Math.min(CUTS - 1, along / sign.widthPt() * CUTS));
        top[cut] = Math.min(top[cut], down);
        bottom[cut] = Math.max(bottom[cut], down);
    }

    /** 1 to the right, -1 to the left, 0 where it is no arrow. */
    static int of(Placed sign, Row row) {
        ArrowProfile p = new ArrowProfile(sign, row);
        double widest = 0;
        for (int i = 0; i < CUTS; i++) {
            if (p.top[i] > p.bottom[i]) {
                return 0;
            }
            widest = Math.max(widest, p.wide(i));
        }
        if (!p.onAxis(widest)) {
            return 0;
        }
        return p.points(widest, 1) ? 1 : p.points(widest, -1) ? -1 : 0;
    }

    private double wide(int cut) {
        return bottom[cut] - top[cut];
    }

    private boolean onAxis(double widest) {
        double axis = (top[CUTS / 2] + bottom[CUTS / 2]) / 2;
        for (int i = 0; i < CUTS; i++) {
            if (Math.abs((top[i] + bottom[i]) / 2 - axis) > ASIDE * widest) {
                return false;
            }
        }
        return true;
    }

    private boolean points(double widest, int way) {
        int i = 0;
        while (i < CUTS && wide(cut(i, way)) <= THIN * widest) {
            i++;
        }
        if (i < SHAFT * CUTS || i == CUTS) {
            return false;
        }
        int back = i;
        while (i < CUTS && wide(cut(i, way)) < 0.95 * widest) {
            i++;
        }
        boolean sudden = i - back <= 0.1 * CUTS;
        while (i + 1 < CUTS) {
            if (wide(cut(i + 1, way)) > wide(cut(i, way)) + 0.1 * widest) {
                return false;
            }
            i++;
        }
        return sudden && wide(cut(CUTS - 1, way)) <= THIN * widest;
    }

    private static int cut(int i, int way) {
        return way > 0 ? i : CUTS - 1 - i;
    }
}
