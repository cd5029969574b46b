package linewalk.importer.stroke;

import java.util.Arrays;
import linewalk.drawing.Point;
import linewalk.importer.page.Segment;

/**
 * What a sign looks like, whatever its place, size and turn: a small bitmap, {@value #STEPS} steps to the height of a
 * capital, and the same with each spot one step larger.
 */
final class Shape {

    static final int STEPS = 36;
    private static final int ROWS = 62;
    private static final int ABOVE = 44;
    private static final int COLUMNS = 62;

    /** Ink that may lie beside the other's, since places are rounded. */
    private static final double STRAY = 0.02;

    /** Letters whose small form is the large one, only smaller. */
    private static final String LARGE = "COSUVWXZ";

    private static final String SMALL = "cosuvwxz";

    /** In heights of a capital. */
    private static final double LOW = 0.85;

    private final long[] ink = new long[ROWS];
    private final long[] wide = new long[ROWS];
    private final int count;
    private final double width;
    private final double height;
    private final boolean painted;

    private Shape(Placed sign, Row row) {
        double step = row.heightPt() / STEPS;
        for (Piece piece : sign.pieces()) {
            for (Segment s : piece.segments()) {
                int n = (int) Math.ceil(s.lengthPt() / step * 2) + 1;
                for (int i = 0; i <= n; i++) {
                    Point p = s.at((double) i / n);
                    double up = row.baselinePt() - row.turn().down(p);
                    set(row.turn().along(p) - row.lean() * up - sign.u0(), up, step);
                }
            }
        }
        count = Arrays.stream(ink).mapToInt(Long::bitCount).sum();
        height = sign.heightPt() / row.heightPt();
        width = sign.widthPt() / row.heightPt();
        painted = sign.pieces().get(0).painted();
    }

    static Shape of(Placed sign, Row row) {
        return new Shape(sign, row);
    }

    private void set(double right, double up, double step) {
        int x = 2 + (int) Math.round(right / step);
        int y = ABOVE - (int) Math.round(up / step);
        if (x < 1 || x >= COLUMNS || y < 1 || y >= ROWS - 1) {
            return;
        }
        ink[y] |= 1L << x;
        for (int dy = -1; dy <= 1; dy++) {
            wide[y + dy] |= 7L << (x - 1);
        }
    }

    /** The same letter, large or small as its height has it. */
    String cased(String text) {
        int at = text.length() == 1 ? (height < LOW ? LARGE : SMALL).indexOf(text) : -1;
        return at < 0 ? text : (height < LOW ? SMALL : LARGE).substring(at, at + 1);
    }

    boolean like(Shape o) {
        return painted == o.painted && Math.abs(width - o.width) < 2.5 / STEPS && covers(o) && o.covers(this);
    }

    /** Share of both shapes' ink that lies beside the other's; 1 where one is clearly wider. */
    double strangeness(Shape o) {
        boolean comparable = painted == o.painted && Math.abs(width - o.width) < 2.5 / STEPS;
        return comparable ? (double) (stray(o) + o.stray(this)) / (count + o.count) : 1;
    }

    private boolean covers(Shape o) {
        return stray(o) <= STRAY * o.count;
    }

    private int stray(Shape o) {
        int stray = 0;
        for (int y = 0; y < ROWS; y++) {
            stray += Long.bitCount(o.ink[y] & ~wide[y]);
        }
        return stray;
    }
}
