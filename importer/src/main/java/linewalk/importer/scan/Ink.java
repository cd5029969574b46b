package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.util.Arrays;

/**
 * Tells ink from paper. What counts is how dark a pixel is against the paper around it, so shadows and folds stay paper;
 * where all ink of a neighbourhood is faded, the limit goes half-way to it.
 */
final class Ink {

    private static final int TILE = 64;

    /** Paper is the tone that this share of a tile's pixels lies below. */
    private static final double PAPER = 0.8;

    /** Darkness (0 paper, 255 black) half-way to ordinary ink seen through the blur of a scanner. */
    private static final int USUAL = 100;

    private static final int FAINTEST = 55;

    /** So many times the paper's own unevenness is no ink. */
    private static final double NOISE = 5;

    private final GrayU8 grey;
    private final int columns;
    private final int rows;
    private final int[] paper;
    private final int[] limit;

    private Ink(GrayU8 grey) {
        this.grey = grey;
        this.columns = (grey.width + TILE - 1) / TILE;
        this.rows = (grey.height + TILE - 1) / TILE;
        this.paper = new int[columns * rows];
        this.limit = new int[columns * rows];
    }

    static Bits of(GrayU8 grey) {
        Ink ink = new Ink(grey);
        ink.measure();
        return ink.bits();
    }

    private void measure() {
        int[] darkest = new int[columns * rows];
        double[] noise = new double[columns * rows];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                int[] histogram = histogram(c, r);
                int at = r * columns + c;
                paper[at] = Math.max(1, quantile(histogram, PAPER));
                darkest[at] = quantile(histogram, 0.01);
                noise[at] = paper[at] - quantile(histogram, 0.5) + 1;
            }
        }
        fillFromNeighbours();
        double[] sorted = noise.clone();
        Arrays.sort(sorted);
        double usualNoise = sorted[sorted.length / 2] * 1.5;
        for (int i = 0; i < limit.length; i++) {
            int dark = 255 - darkest(darkest, i) * 255 / paper[i];
            limit[i] = (int)
                    Math.max(Math.max(FAINTEST, NOISE * usualNoise * 255 / paper[i]), Math.min(USUAL, dark * 0.45));
        }
    }

    /** The darkest of a tile and those around it: a tile that holds a thin line's end alone should not set its own limit. */
    private int darkest(int[] tiles, int at) {
        int least = 255;
        for (int r = Math.max(0, at / columns - 1); r <= Math.min(rows - 1, at / columns + 1); r++) {
            for (int c = Math.max(0, at % columns - 1); c <= Math.min(columns - 1, at % columns + 1); c++) {
                least = Math.min(least, tiles[r * columns + c]);
            }
        }
        return least;
    }

    /** Tiles full of ink have no paper of their own. */
    private void fillFromNeighbours() {
        int[] own = paper.clone();
        for (int at = 0; at < own.length; at++) {
            int most = own[at];
            for (int r = Math.max(0, at / columns - 1); r <= Math.min(rows - 1, at / columns + 1); r++) {
                for (int c = Math.max(0, at % columns - 1); c <= Math.min(columns - 1, at % columns + 1); c++) {
                    most = Math.max(most, own[r * columns + c]);
                }
            }
            paper[at] = own[at] < most / 2 ? most : own[at];
        }
    }

    private int[] histogram(int c, int r) {
        int[] histogram = new int[256];
        int x1 = Math.min(grey.width, (c + 1) * TILE);
        for (int y = r * TILE; y < Math.min(grey.height, (r + 1) * TILE); y++) {
            int row = grey.startIndex + y * grey.stride;
            for (int x = c * TILE; x < x1; x++) {
                histogram[grey.data[row + x] & 0xFF]++;
            }
        }
        return histogram;
    }

    private static int quantile(int[] histogram, double share) {
        long left = (long) (Arrays.stream(histogram).sum() * share);
        int tone = 0;
        while (tone < 255 && (left -= histogram[tone]) >= 0) {
            tone++;
        }
        return tone;
    }

    private Bits bits() {
        Bits bits = new Bits(grey.width, grey.height);
        for (int y = 0; y < grey.height; y++) {
            double gy = Math.max(0, Math.min(rows - 1, (y + 0.5) / TILE - 0.5));
            int r0 = (int) gy;
            int r1 = Math.min(rows - 1, r0 + 1);
            int row = grey.startIndex + y * grey.stride;
            for (int c = 0; c < columns; c++) {
                row(bits, y, row, c, r0, r1, gy - r0);
            }
        }
        return bits;
    }

    /** One row of a tile, the limit interpolated between the middles of tiles. */
    private void row(Bits bits, int y, int row, int c, int r0, int r1, double v) {
        double middle = tone(c, r0, r1, v);
        double left = tone(Math.max(0, c - 1), r0, r1, v);
        double right = tone(Math.min(columns - 1, c + 1), r0, r1, v);
        // nearly all of a page is lighter than any of the tile's limits
        int most = (int) Math.ceil(Math.max(middle, Math.max(left, right)));
        int x1 = Math.min(grey.width, (c + 1) * TILE);
        for (int x = c * TILE; x < x1; x++) {
            int tone = grey.data[row + x] & 0xFF;
            if (tone < most) {
                double u = (x - c * TILE + 0.5) / TILE - 0.5;
                if (tone < (u < 0 ? middle + u * (middle - left) : middle + u * (right - middle))) {
                    bits.set(x, y);
                }
            }
        }
    }

    private double tone(int c, int r0, int r1, double v) {
        return (1 - v) * tone(c, r0) + v * tone(c, r1);
    }

    /** The tone below which a pixel is ink. */
    private double tone(int c, int r) {
        int at = r * columns + c;
        return paper[at] * (1 - limit[at] / 255.0);
    }
}
