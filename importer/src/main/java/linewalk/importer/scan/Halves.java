package linewalk.importer.scan;

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
        return row.along()
                ? apart(
                        b.middleX(),
                        b.y0(),
                        b.y1(),
                        (row.x0() + row.x1()) / 2,
                        row.y0(),
                        row.y1(),
                        row.capPx(),
                        ink,
                        true)
                : apart(
                        b.middleY(),
                        b.x0(),
                        b.x1(),
                        (row.y0() + row.y1()) / 2,
                        row.x0(),
                        row.x1(),
                        row.capPx(),
                        ink,
                        false);
    }

    private static boolean apart(
            double middle, int b0, int b1, int at, int row0, int row1, double cap, Bits ink, boolean down) {
        int from = Math.min(b1, row1);
        int to = Math.max(b0, row0);
        double high = b1 - b0;
        boolean beside = to > from && to - from < OFF * cap && Math.abs(middle - at) < ASIDE * cap;
        if (!beside || Math.min(high, cap) < SAME_HEIGHT * Math.max(high, cap)) {
            return false;
        }
        for (int i = from; i < to; i++) {
            if (down ? ink.get(at, i) : ink.get(i, at)) {
                return true;
            }
        }
        return false;
    }
}
