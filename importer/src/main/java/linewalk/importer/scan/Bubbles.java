package linewalk.importer.scan;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Circles that a line divides, a sheet above it and a zone below: what is lettered too large for its half hangs together
 * with the rim or the line. A narrow moat inside both halves cuts it off.
 */
final class Bubbles {

    private static final double LEAST_LETTER_MM = 1.2;
    private static final double MOST_LETTER_MM = 8;

    private static final double LEAST_RADIUS_MM = 3;
    private static final double MOST_RADIUS_MM = 14;

    /** Share of the rim that must be ink. */
    private static final double SEEN = 0.9;

    private static final int SAMPLES = 90;

    /** Cosine and sine of the angles at which a rim is looked at. */
    private static final double[][] AROUND = IntStream.range(0, SAMPLES)
            .mapToDouble(i -> 2 * Math.PI * i / SAMPLES)
            .mapToObj(angle -> new double[] {Math.cos(angle), Math.sin(angle)})
            .toArray(double[][]::new);

    /** How far the middle may be off at first, in pixels. */
    private static final int OFF = 3;

    private static final int MOAT_PX = 2;
    private static final int ROUGH_PX = 1;

    /** The ink with its rows as columns where the page lies on its side: a is along the dividing line, c across it. */
    private record View(Bits ink, boolean swapped) {

        boolean get(int a, int c) {
            return swapped ? ink.get(c, a) : ink.get(a, c);
        }

        void clear(int a, int c) {
            if (swapped) {
                ink.fill(a, c, c + 1, false);
            } else {
                ink.fill(c, a, a + 1, false);
            }
        }
    }

    private record Bar(double a, double c, double slope, double halfPx, double thickPx) {

        double off(double atA, double atC) {
            return Math.abs(atC - c - slope * (atA - a));
        }
    }

    private record Ring(double a, double c, double radius) {}

    private final View view;
    private final double pxPerMm;

    private Bubbles(Bits ink, boolean swapped, double pxPerMm) {
        view = new View(ink, swapped);
        this.pxPerMm = pxPerMm;
    }

    /**
     * Clears the moats of bubbles in which something stands free in one half.
     *
     * @return whether any ink was cleared
     */
    static boolean part(Bits ink, List<Blob> blobs, double pxPerMm) {
        boolean found = false;
        for (Blob b : blobs) {
            if (b.longer() > LEAST_LETTER_MM * pxPerMm && b.longer() < MOST_LETTER_MM * pxPerMm) {
                for (boolean swapped : new boolean[] {false, true}) {
                    Bubbles all = new Bubbles(ink, swapped, pxPerMm);
                    found |= all.around(b, 1) || all.around(b, -1);
                }
            }
        }
        return found;
    }

    private boolean around(Blob b, int sense) {
        int a = (int) Math.round(view.swapped ? b.middleY() : b.middleX());
        int from = view.swapped ? (sense > 0 ? b.x1() : b.x0() - 1) : sense > 0 ? b.y1() : b.y0() - 1;
        Bar bar = bar(a, from, sense, view.swapped ? b.width() : b.height());
        if (bar == null || bar.halfPx < LEAST_RADIUS_MM * pxPerMm || bar.halfPx > MOST_RADIUS_MM * pxPerMm) {
            return false;
        }
        Ring ring = ring(bar);
        if (ring == null) {
            return false;
        }
        return moat(ring, bar);
    }

    /** The line across, where it begins within a letter's height; null where there is none. */
    private Bar bar(int a, int from, int sense, int high) {
        int c = from;
        while (Math.abs(c - from) <= high && !view.get(a, c)) {
            c += sense;
        }
        int thick = 0;
        while (thick <= high && view.get(a, c + sense * thick)) {
            thick++;
        }
        if (thick == 0 || thick > 0.35 * high) {
            return null;
        }
        double middle = c + sense * (thick - 1) / 2.0;
        double[] left = end(a, middle, -1, thick);
        double[] right = end(a, middle, 1, thick);
        if (left == null || right == null) {
            return null;
        }
        double slope = (right[1] - left[1]) / (right[0] - left[0]);
        return new Bar((left[0] + right[0]) / 2, (left[1] + right[1]) / 2, slope, (right[0] - left[0]) / 2, thick);
    }

    /** Where the line meets what goes on to both its sides; letters that touch it stand on one. */
    private double[] end(int from, double middle, int step, int thick) {
        double c = middle;
        int most = (int) (MOST_RADIUS_MM * 2 * pxPerMm);
        for (int a = from + step; Math.abs(a - from) < most; a += step) {
            int at = (int) Math.round(c);
            if (!view.get(a, at)) {
                at = view.get(a, at - 1) ? at - 1 : at + 1;
                if (!view.get(a, at)) {
                    return null;
                }
            }
            int up = reach(a, at, -1, 2 * thick + 2);
            int down = reach(a, at, 1, 2 * thick + 2);
            if (up > thick && down > thick) {
                return new double[] {a, c};
            }
            if (up + down < 1.6 * thick + 2) {
                c = at + (down - up) / 2.0;
            }
        }
        return null;
    }

    private int reach(int a, int c, int sense, int most) {
        int n = 0;
        while (n < most && view.get(a, c + sense * (n + 1))) {
            n++;
        }
        return n;
    }

    /** The rim around the line, as nearly as it can be put in its ink; null where there is none. */
    private Ring ring(Bar bar) {
        Ring best = null;
        double most = 0;
        for (int i = 0; i < (2 * OFF + 1) * (2 * OFF + 1); i++) {
            int da = outward(i % (2 * OFF + 1));
            int dc = outward(i / (2 * OFF + 1));
            for (double r = bar.halfPx - OFF; r <= bar.halfPx + bar.thickPx + OFF; r++) {
                Ring ring = new Ring(bar.a + da, bar.c + dc, r);
                double sum = 0;
                boolean rim = isRim(ring);
                for (int k = -2; k <= 2 && rim; k++) {
                    sum += seen(new Ring(ring.a, ring.c, r + k));
                }
                if (sum > most) {
                    most = sum;
                    best = ring;
                }
            }
        }
        return best;
    }

    /** 0, -1, 1, -2, 2: where several fit, the one in the middle is meant. */
    private static int outward(int i) {
        return i % 2 == 0 ? i / 2 : -(i + 1) / 2;
    }

    private double seen(Ring ring) {
        int n = 0;
        for (double[] direction : AROUND) {
            n += inked(ring, direction) ? 1 : 0;
        }
        return (double) n / SAMPLES;
    }

    /** Nearly all that are tried are none, and have shown it before the way around is gone. */
    private boolean isRim(Ring ring) {
        int missed = 0;
        for (double[] direction : AROUND) {
            if (!inked(ring, direction) && ++missed >= (1 - SEEN) * SAMPLES) {
                return false;
            }
        }
        return true;
    }

    private boolean inked(Ring ring, double[] direction) {
        return view.get((int) Math.round(ring.a + ring.radius * direction[0]), (int)
                Math.round(ring.c + ring.radius * direction[1]));
    }

    /** Whether there was ink in it. A rim is rough: its outermost pixels are left alone. */
    private boolean moat(Ring ring, Bar bar) {
        double inner = ring.radius;
        while (inner > ring.radius / 2 && seen(new Ring(ring.a, ring.c, inner)) > 0.5) {
            inner--;
        }
        inner -= ROUGH_PX;
        double beside = bar.thickPx / 2 + 0.5 + ROUGH_PX;
        boolean found = false;
        for (int c = (int) (ring.c - inner) - 1; c <= ring.c + inner + 1; c++) {
            for (int a = (int) (ring.a - inner) - 1; a <= ring.a + inner + 1; a++) {
                double d = Math.hypot(a - ring.a, c - ring.c);
                double off = bar.off(a, c);
                boolean atRim = d > inner - MOAT_PX || off <= beside + MOAT_PX;
                if (d <= inner && off > beside && atRim && view.get(a, c)) {
                    view.clear(a, c);
                    found = true;
                }
            }
        }
        return found;
    }
}
