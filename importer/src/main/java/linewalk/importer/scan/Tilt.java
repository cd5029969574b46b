package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;

/**
 * By how much the paper lay askew: the angle at which the ink of thin lines falls into the fewest rows, and the same for
 * columns. The two differ where the scanner stretches.
 *
 * @param rowsDeg how far lines meant to lie flat fall to the right, clockwise
 * @param columnsDeg how far lines meant to stand lean, clockwise
 */
record Tilt(double rowsDeg, double columnsDeg) {

    private static final double LARGEST_DEG = 4;
    private static final double COARSE_DEG = 0.1;
    private static final double FINE_DEG = 0.005;

    /** Pixels of ink longer than this are no cut through a thin line. */
    private static final int THICK = 24;

    private static final int MOST_SAMPLES = 200_000;

    static Tilt of(Bits bits) {
        double rows = angle(cutsDown(bits));
        double columns = angle(cutsAcross(bits));
        return new Tilt(rows, -columns);
    }

    /** Middles of short vertical runs of ink: (along x, across y). */
    private static List<double[]> cutsDown(Bits bits) {
        List<double[]> cuts = new ArrayList<>();
        int step = Math.max(4, bits.width / 500);
        for (int x = step / 2; x < bits.width; x += step) {
            int start = -1;
            for (int y = 0; y <= bits.height; y++) {
                boolean ink = bits.get(x, y);
                if (ink && start < 0) {
                    start = y;
                } else if (!ink && start >= 0) {
                    add(cuts, x, start, y);
                    start = -1;
                }
            }
        }
        return cuts;
    }

    private static List<double[]> cutsAcross(Bits bits) {
        List<double[]> cuts = new ArrayList<>();
        int step = Math.max(4, bits.height / 500);
        for (int y = step / 2; y < bits.height; y += step) {
            for (int x = bits.nextInk(0, y); x < bits.width; ) {
                int end = bits.nextPaper(x, y);
                add(cuts, y, x, end);
                x = bits.nextInk(end, y);
            }
        }
        return cuts;
    }

    private static void add(List<double[]> cuts, double along, int from, int to) {
        if (to - from <= THICK && cuts.size() < MOST_SAMPLES) {
            cuts.add(new double[] {along, (from + to) / 2.0});
        }
    }

    private static double angle(List<double[]> cuts) {
        double best = search(cuts, 0, LARGEST_DEG, COARSE_DEG, 2);
        best = search(cuts, best, COARSE_DEG, COARSE_DEG / 5, 1);
        return search(cuts, best, COARSE_DEG / 5, FINE_DEG, 1);
    }

    private static double search(List<double[]> cuts, double around, double reach, double step, double binPx) {
        double best = around;
        double most = -1;
        for (double deg = around - reach; deg <= around + reach + 1e-9; deg += step) {
            double sharp = sharpness(cuts, Math.tan(Math.toRadians(deg)), binPx);
            // straight paper wins a tie
            if (sharp > most * (1 + 1e-9)) {
                most = sharp;
                best = deg;
            }
        }
        return best;
    }

    private static double sharpness(List<double[]> cuts, double slope, double binPx) {
        int offset = 4_000;
        int[] bins = new int[40_000];
        for (double[] c : cuts) {
            int bin = (int) ((c[1] - slope * c[0]) / binPx) + offset;
            if (bin >= 0 && bin < bins.length) {
                bins[bin]++;
            }
        }
        double sum = 0;
        for (int b : bins) {
            sum += (double) b * b;
        }
        return sum;
    }
}
