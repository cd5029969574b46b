package linewalk.importer.scan;

import java.util.List;

/** What pens left on the page, from the lengths of ink runs along rows and columns: lines count by their length. */
record Thickness(int thinPx, int thickPx) {

    private static final int LONGEST = 40;

    /** So much of all runs that cut a line may be thicker than the thickest pen: lettering in bold, dots. */
    private static final double THICKER = 0.06;

    /** @param largePx blobs larger than this are no lettering */
    static Thickness of(List<Blob> blobs, double largePx) {
        long[] runs = new long[LONGEST + 1];
        for (Blob b : blobs) {
            if (b.longer() > largePx) {
                across(b, runs);
                down(b, runs);
            }
        }
        // single pixels are noise on one scan and lines on another: lines are seldom alone in being thin
        long total = 0;
        for (int i = 1; i < LONGEST; i++) {
            total += runs[i];
        }
        return new Thickness(Math.max(1, quantile(runs, total, 0.25)), Math.max(2, quantile(runs, total, 1 - THICKER)));
    }

    private static void across(Blob b, long[] runs) {
        int[] r = b.runs();
        for (int i = 0; i < r.length; i += 3) {
            runs[Math.min(LONGEST, r[i + 2] - r[i + 1])]++;
        }
    }

    /** Down a few columns of each run: how far the ink goes on below it. */
    private static void down(Blob b, long[] runs) {
        int[] top = new int[b.width()];
        int[] bottom = new int[b.width()];
        int[] r = b.runs();
        for (int i = 0; i < r.length; i += 3) {
            for (int x = r[i + 1] - b.x0(); x < r[i + 2] - b.x0(); x++) {
                if (bottom[x] != r[i]) {
                    count(runs, bottom[x] - top[x]);
                    top[x] = r[i];
                }
                bottom[x] = r[i] + 1;
            }
        }
        for (int x = 0; x < top.length; x++) {
            count(runs, bottom[x] - top[x]);
        }
    }

    private static void count(long[] runs, int length) {
        if (length > 0) {
            runs[Math.min(LONGEST, length)]++;
        }
    }

    private static int quantile(long[] runs, long total, double share) {
        long left = (long) (total * share);
        int i = 1;
        while (i < LONGEST - 1 && (left -= runs[i]) > 0) {
            i++;
        }
        return i;
    }
}
