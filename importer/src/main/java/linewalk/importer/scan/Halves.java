package linewalk.importer.scan;

import java.util.stream.IntStream;

/**
 * The halves of a circle or a box that a line divides: what stands alone in the one, over the middle of a row in the other,
 * is a letter or a figure, whatever else it may look like.
 */
final class Halves {

    /** How far it stands off the row's middle, and off the row, in heights of a capital. */
    private static final double ASIDE = 0.5;

    private static final double OFF = 1.5;

    private static final double SAME_HEIGHT = 0.8;

    private Halves() {}

    /** @param ink of the page, line work too */
    static boolean apart(Blob b, TextRow row, Bits ink) {
        boolean along = row.along();
        double cap = row.capPx();
        double high = along ? b.height() : b.width();
        int middle = along ? (row.x0() + row.x1()) / 2 : (row.y0() + row.y1()) / 2;
        double aside = Math.abs((along ? b.middleX() : b.middleY()) - middle);
        int from = along ? Math.min(b.y1(), row.y1()) : Math.min(b.x1(), row.x1());
        int to = along ? Math.max(b.y0(), row.y0()) : Math.max(b.x0(), row.x0());
        boolean alike = Math.min(high, cap) >= SAME_HEIGHT * Math.max(high, cap);
        if (!alike || aside >= ASIDE * cap || to - from >= OFF * cap) {
            return false;
        }
        return IntStream.range(from, to).anyMatch(i -> along ? ink.get(middle, i) : ink.get(i, middle));
    }
}
