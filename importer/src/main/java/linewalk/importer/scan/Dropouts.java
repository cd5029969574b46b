package linewalk.importer.scan;

import java.util.Arrays;

/**
 * Fills breaks in lines that are shorter than the pen is wide: no drafter leaves such gaps, but worn pens, copiers and
 * folds do. Only between long runs of ink along a row or a column, so that letters side by side stay apart.
 */
final class Dropouts {

    /** Longest break and least ink on both sides of it, in widths of the thin pen. */
    private static final double BREAK = 0.8;

    private static final double RUN = 8;

    private final Bits ink;
    private final int most;
    private final int least;

    private Dropouts(Bits ink, int thinPx) {
        this.ink = ink;
        this.most = (int) Math.max(1, Math.round(BREAK * thinPx));
        this.least = (int) Math.round(RUN * thinPx);
    }

    static void fill(Bits ink, int thinPx) {
        Dropouts d = new Dropouts(ink, thinPx);
        d.alongRows();
        d.alongColumns();
    }

    private void alongRows() {
        for (int y = 0; y < ink.height; y++) {
            int before = 0;
            int end = -1;
            for (int x = ink.nextInk(0, y); x < ink.width; ) {
                int to = ink.nextPaper(x, y);
                if (end >= 0 && x - end <= most && before >= least && to - x >= least) {
                    ink.fill(y, end, x, true);
                }
                before = to - x;
                end = to;
                x = ink.nextInk(to, y);
            }
        }
    }

    private void alongColumns() {
        int[] last = new int[ink.width];
        int[] length = new int[ink.width];
        int[] broken = new int[ink.width];
        Arrays.fill(last, Integer.MIN_VALUE / 2);
        for (int y = 0; y < ink.height; y++) {
            for (int x = ink.nextInk(0, y); x < ink.width; x = ink.nextInk(x + 1, y)) {
                int gap = y - 1 - last[x];
                if (gap > 0) {
                    broken[x] = gap <= most && length[x] >= least ? gap : 0;
                    length[x] = 0;
                }
                last[x] = y;
                if (++length[x] == least && broken[x] > 0) {
                    for (int i = 0; i < broken[x]; i++) {
                        ink.set(x, y - least - i);
                    }
                    broken[x] = 0;
                }
            }
        }
    }
}
