package linewalk.importer.scan;

import linewalk.importer.ocr.Crop;

/**
 * What a sign of a scan looks like, whatever its place, size and turn: how dark it is around its middle, in steps of a
 * sixteenth of a capital, a little blurred, since no two scans of a letter are alike.
 */
final class Glimpse {

    private static final int STEPS = 16;
    private static final int SIDE = 28;
    private static final int BLOCKS = 4;

    /** In heights of a capital, from the baseline to its foot and its top. */
    private final double foot;

    private final double top;
    private final double width;
    private final float[] dark = new float[SIDE * SIDE];

    /** What each block of it adds to its length. */
    private final float[] blocks = new float[BLOCKS * BLOCKS];

    /** @param cap in pixels of the crop, as all that follows */
    private Glimpse(Crop crop, double x0, double x1, double y0, double y1, double baseline, double cap) {
        foot = (baseline - y1) / cap;
        top = (baseline - y0) / cap;
        width = (x1 - x0) / cap;
        double step = cap / STEPS;
        double[] middle = middle(crop, x0, x1, y0, y1);
        double sum = 0;
        for (int j = 0; j < SIDE; j++) {
            for (int i = 0; i < SIDE; i++) {
                double x = middle[0] + (i + 0.5 - SIDE / 2.0) * step;
                double y = middle[1] + (j + 0.5 - SIDE / 2.0) * step;
                boolean own = x > x0 - step && x < x1 + step && y > y0 - step && y < y1 + step;
                dark[j * SIDE + i] = own ? around(crop, x, y, step) : 0;
                sum += dark[j * SIDE + i] * dark[j * SIDE + i];
            }
        }
        for (int k = 0; k < dark.length && sum > 0; k++) {
            dark[k] /= (float) Math.sqrt(sum);
            int block = k / SIDE * BLOCKS / SIDE * BLOCKS + k % SIDE * BLOCKS / SIDE;
            blocks[block] += dark[k] * dark[k];
        }
        for (int k = 0; k < blocks.length; k++) {
            blocks[k] = (float) Math.sqrt(blocks[k]);
        }
    }

    static Glimpse of(RowImage image, Sign s) {
        return new Glimpse(
                image.crop(),
                image.cropX(s.x0()),
                image.cropX(s.x1()),
                image.cropY(s.y0()),
                image.cropY(s.y1()),
                image.baseline(),
                image.cap());
    }

    private static double[] middle(Crop crop, double x0, double x1, double y0, double y1) {
        double sum = 0;
        double mx = 0;
        double my = 0;
        for (int y = (int) Math.max(0, y0 - 1); y < Math.min(crop.heightPx(), y1 + 1); y++) {
            for (int x = (int) Math.max(0, x0 - 1); x < Math.min(crop.widthPx(), x1 + 1); x++) {
                double d = dark(crop, x, y);
                sum += d;
                mx += d * (x + 0.5);
                my += d * (y + 0.5);
            }
        }
        return sum == 0 ? new double[] {(x0 + x1) / 2, (y0 + y1) / 2} : new double[] {mx / sum, my / sum};
    }

    private static double dark(Crop crop, int x, int y) {
        return x < 0 || y < 0 || x >= crop.widthPx() || y >= crop.heightPx()
                ? 0
                : (255 - (crop.grey()[y * crop.widthPx() + x] & 0xFF)) / 255.0;
    }

    /** Mean over a square of two steps. */
    private static float around(Crop crop, double x, double y, double step) {
        double sum = 0;
        int n = 0;
        for (int py = (int) Math.floor(y - step); py < y + step; py++) {
            for (int px = (int) Math.floor(x - step); px < x + step; px++) {
                sum += dark(crop, px, py);
                n++;
            }
        }
        return (float) (sum / n);
    }

    /** Between 0, alike, and 1; 1 also where they are farther apart than {@code most}. */
    double apart(Glimpse o, double most) {
        boolean sized = Math.abs(foot - o.foot) + Math.abs(top - o.top) < 0.3 && Math.abs(width - o.width) < 0.2;
        // no two blocks have more in common than their lengths allow
        return sized && 1 - common(blocks, o.blocks) <= most ? 1 - common(dark, o.dark) : 1;
    }

    private static float common(float[] a, float[] b) {
        float sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }
}
