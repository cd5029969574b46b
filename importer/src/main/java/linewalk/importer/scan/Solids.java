package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Filled shapes: where a square wider than any line fits into the ink, the shape around it is cut free of the lines that
 * meet it by opening it with a disc a little wider than they are, and its sides are prolonged to the corners so lost.
 */
final class Solids {

    /** A round shape smaller than this share of the square is the ink where slanting lines cross. */
    private static final double CROSSING = 1.7;

    /** Where a line ends at the waist of two shapes, the ink is wider than a line. */
    private static final double WIDER = 1.3;

    private final Bits ink;
    private final Upright upright;
    private final int square;
    private final double[] discs;

    /**
     * A shape and whether any line meets it.
     *
     * @param stubPx what sticks out further belongs to a line
     */
    record Found(Solid solid, int[] box, int inkPx, double stubPx) {

        /** No line meets the shape: the blob is hardly more than it. */
        boolean isAllOf(Blob b) {
            double beyond =
                    Math.max(Math.max(box[0] - b.x0(), b.x1() - box[2]), Math.max(box[1] - b.y0(), b.y1() - box[3]));
            return beyond < stubPx
                    && b.x0() <= box[0]
                    && b.y0() <= box[1]
                    && b.x1() >= box[2]
                    && b.y1() >= box[3]
                    && inkPx > 0.75 * b.ink();
        }
    }

    Solids(Bits ink, Upright upright, Thickness thickness) {
        this.ink = ink;
        this.upright = upright;
        this.square = thickness.thickPx() + 2;
        double thin = 0.5 * (thickness.thinPx() + 1.4);
        double thick = 0.5 * (thickness.thickPx() + 1.4);
        this.discs = new double[] {thin, (thin + thick) / 2, thick, WIDER * thick, WIDER * WIDER * thick};
    }

    List<Found> find() {
        List<Found> found = new ArrayList<>();
        for (int[] seed : seeds()) {
            boolean bar = Math.max(seed[2] - seed[0], seed[3] - seed[1]) > 14 * square;
            if (!bar && !add(seed, found)) {
                halves(seed).forEach(h -> add(h, found));
            }
        }
        return found;
    }

    /** False where what was found, if anything, is less than the seed. */
    private boolean add(int[] seed, List<Found> found) {
        double x = (seed[0] + seed[2]) / 2.0;
        double y = (seed[1] + seed[3]) / 2.0;
        if (found.stream().anyMatch(f -> f.solid.covers(upright.x(x, y), upright.y(x, y)))) {
            return true;
        }
        Found f = shape(seed);
        if (f != null) {
            found.add(f);
        }
        return f != null
                && f.box[0] < seed[0] + square
                && f.box[1] < seed[1] + square
                && f.box[2] > seed[2] - square
                && f.box[3] > seed[3] - square;
    }

    /** Two shapes that touch. */
    private List<int[]> halves(int[] seed) {
        int w = seed[2] - seed[0];
        int h = seed[3] - seed[1];
        if (Math.max(w, h) < 3 * square) {
            return List.of();
        }
        return h > w
                ? List.of(
                        new int[] {seed[0], seed[1], seed[2], seed[1] + h / 2},
                        new int[] {seed[0], seed[1] + h / 2, seed[2], seed[3]})
                : List.of(
                        new int[] {seed[0], seed[1], seed[0] + w / 2, seed[3]},
                        new int[] {seed[0] + w / 2, seed[1], seed[2], seed[3]});
    }

    /** Boxes of the squares that fit, those that overlap as one: x0, y0, x1, y1, the last just outside. */
    private List<int[]> seeds() {
        int[][] rows = new int[ink.height][];
        for (int y = 0; y < ink.height; y++) {
            rows[y] = shrunk(y);
        }
        int done = 1;
        while (done < square) {
            int step = Math.min(done, square - done);
            for (int y = 0; y + step < rows.length; y++) {
                rows[y] = both(rows[y], rows[y + step]);
            }
            done += step;
        }
        return grouped(rows);
    }

    /** Where a run as wide as the square may start. */
    private int[] shrunk(int y) {
        List<Integer> out = new ArrayList<>();
        for (int x = ink.nextInk(0, y); x < ink.width; ) {
            int end = ink.nextPaper(x, y);
            if (end - x >= square) {
                out.add(x);
                out.add(end - square + 1);
            }
            x = ink.nextInk(end, y);
        }
        return out.stream().mapToInt(i -> i).toArray();
    }

    private static int[] both(int[] a, int[] b) {
        if (a.length == 0 || b.length == 0) {
            return new int[0];
        }
        List<Integer> out = new ArrayList<>();
        for (int i = 0, j = 0; i < a.length && j < b.length; ) {
            int from = Math.max(a[i], b[j]);
            int to = Math.min(a[i + 1], b[j + 1]);
            if (from < to) {
                out.add(from);
                out.add(to);
            }
            if (a[i + 1] < b[j + 1]) {
                i += 2;
            } else {
                j += 2;
            }
        }
        return out.stream().mapToInt(i -> i).toArray();
    }

    private List<int[]> grouped(int[][] rows) {
        List<int[]> boxes = new ArrayList<>();
        Map<Integer, int[]> open = new HashMap<>();
        for (int y = 0; y + square <= rows.length; y++) {
            Map<Integer, int[]> next = new HashMap<>();
            for (int i = 0; i < rows[y].length; i += 2) {
                int[] box = null;
                for (int[] b : open.values()) {
                    box = rows[y][i] <= b[4] && rows[y][i + 1] >= b[5] - square ? b : box;
                }
                if (box == null) {
                    box = new int[] {rows[y][i], y, 0, 0, 0, 0};
                    boxes.add(box);
                }
                box[0] = Math.min(box[0], rows[y][i]);
                box[2] = Math.max(box[2], rows[y][i + 1] - 1 + square);
                box[3] = y + square;
                box[4] = rows[y][i + 1];
                box[5] = rows[y][i] + square;
                next.put(rows[y][i], box);
            }
            open = next;
        }
        return boxes;
    }

    /** The thinnest disc that frees the shape of the lines it is met by leaves most of its corners. */
    private Found shape(int[] seed) {
        int size = Math.max(seed[2] - seed[0], seed[3] - seed[1]);
        int margin = (int) Math.max(1.6 * square, 0.9 * size);
        int[] box = {seed[0] - margin, seed[1] - margin, seed[2] + margin, seed[3] + margin};
        for (double disc : discs) {
            Opened opened = new Opened(ink, box, disc);
            boolean[] region = opened.around((seed[0] + seed[2]) / 2, (seed[1] + seed[3]) / 2);
            Found found = region == null || opened.touchesRim(region) ? null : found(opened, region, disc);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private Found found(Opened opened, boolean[] region, double disc) {
        List<double[]> hull = Hull.around(opened, region);
        int area = Opened.count(region);
        double around = Hull.area(hull);
        if (hull.size() < 3 || area < 0.84 * around - Hull.length(hull) * 0.3) {
            return null;
        }
        boolean dot = Hull.round(hull, around);
        if (dot && around < CROSSING * square * square) {
            return null;
        }
        List<double[]> few = Hull.few(hull);
        List<double[]> triangle = dot ? null : new Wedge(ink, opened, region).fitted(few);
        List<double[]> outline = dot ? hull : triangle == null ? few : triangle;
        List<double[]> registered = outline.stream()
                .map(p -> new double[] {upright.x(p[0], p[1]), upright.y(p[0], p[1])})
                .toList();
        return new Found(new Solid(registered, dot), opened.boxOf(region), area, 2 * disc + 2);
    }
}
