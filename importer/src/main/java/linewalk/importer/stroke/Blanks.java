package linewalk.importer.stroke;

import java.util.List;

/** Where words end: the emptiest place between the usual gap of letters and the usual gap of words. */
final class Blanks {

    /** In heights of a capital. */
    private static final double STEP = 0.05;

    private static final double LETTERS = 0.45;
    private static final double USUAL = 0.55;
    private static final double WIDEST = 1.6;

    /** Words are at least so much farther apart than letters. */
    private static final int APART = 4;

    private Blanks() {}

    static double from(List<Row> rows) {
        int[] count = new int[(int) (WIDEST / STEP) + 3];
        for (Row r : rows) {
            for (int i = 0; i + 1 < r.signs().size(); i++) {
                int bin = (int) (Math.max(0, r.gap(i)) / STEP) + 1;
                if (bin < count.length - 1) {
                    count[bin]++;
                }
            }
        }
        int letters = peak(count, 1, (int) (LETTERS / STEP) + 1);
        int words = peak(count, letters + APART, count.length - 1);
        return words < 0 || around(count, words) < 3 ? USUAL : STEP * (valley(count, letters, words) - 0.5);
    }

    private static int around(int[] count, int i) {
        return count[i - 1] + count[i] + count[i + 1];
    }

    private static int peak(int[] count, int from, int to) {
        int best = -1;
        for (int i = Math.max(1, from); i < to; i++) {
            if (best < 0 || around(count, i) > around(count, best)) {
                best = i;
            }
        }
        return best;
    }

    /** The middle of the emptiest bins; of several stretches the last, since narrow letters may stand far apart too. */
    private static double valley(int[] count, int from, int to) {
        int least = Integer.MAX_VALUE;
        int last = from;
        for (int i = from + 1; i < to; i++) {
            if (count[i] <= least) {
                least = count[i];
                last = i;
            }
        }
        int first = last;
        while (first - 1 > from && count[first - 1] == least) {
            first--;
        }
        return (first + last) / 2.0;
    }
}
