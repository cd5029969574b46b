package linewalk.importer.scan;

import java.util.Optional;

/**
 * A dash drawn around a corner: two limbs of one pen along two sides of its box, and nothing else. It looks like a letter
 * L.
 *
 * @param x where the limbs meet, in pixels of the scan
 * @param acrossX the free end of the level limb
 * @param downY the free end of the upright limb
 */
record DashCorner(double x, double y, double acrossX, double downY) {

    /** Least length of a limb, in widths. */
    private static final double LEAST_LONG = 2;

    /** How wide the strips are in which the limbs lie, in widths, and how much of the ink they hold. */
    private static final double STRIP = 1.5;

    private static final double ALL = 0.93;

    static Optional<DashCorner> of(Blob b, double mostWidePx) {
        double pen = (double) b.ink() / (b.width() + b.height());
        if (pen > mostWidePx || b.shorter() < LEAST_LONG * pen) {
            return Optional.empty();
        }
        for (boolean left : new boolean[] {true, false}) {
            for (boolean top : new boolean[] {true, false}) {
                double level = top ? b.y0() + STRIP * pen : b.y1() - STRIP * pen;
                double upright = left ? b.x0() + STRIP * pen : b.x1() - STRIP * pen;
                if (inked(b, left, upright, top, level) >= ALL * b.ink()) {
                    double half = pen / 2;
                    double x = left ? b.x0() + half : b.x1() - half;
                    double y = top ? b.y0() + half : b.y1() - half;
                    return Optional.of(new DashCorner(x, y, left ? b.x1() : b.x0(), top ? b.y1() : b.y0()));
                }
            }
        }
        return Optional.empty();
    }

    /** How much ink lies in the two strips; none where a limb does not go all along its side. */
    private static int inked(Blob b, boolean left, double upright, boolean top, double level) {
        int inside = 0;
        int rows = 0;
        boolean[] columns = new boolean[b.width()];
        int[] r = b.runs();
        int row = -1;
        for (int i = 0; i < r.length; i += 3) {
            for (int x = r[i + 1]; x < r[i + 2]; x++) {
                boolean inUpright = left ? x < upright : x >= upright;
                boolean inLevel = top ? r[i] < level : r[i] >= level;
                inside += inUpright || inLevel ? 1 : 0;
                columns[x - b.x0()] |= inLevel;
                if (inUpright && row != r[i]) {
                    row = r[i];
                    rows++;
                }
            }
        }
        int across = 0;
        for (boolean c : columns) {
            across += c ? 1 : 0;
        }
        return rows < ALL * b.height() || across < ALL * b.width() ? 0 : inside;
    }
}
