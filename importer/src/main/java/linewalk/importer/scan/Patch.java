package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;

/**
 * A row's own ink as the scan shows it: ink black, paper white, whatever the scan made of them, and paper where other ink
 * is.
 *
 * @param x0 of its left column in the scan; {@code y0} of its top row
 */
record Patch(int x0, int y0, int width, int height, float[] tones) {

    /** Around the row's box. */
    private static final int EDGE = 3;

    static Patch of(TextRow row, GrayU8 grey) {
        Bits own = own(row);
        int[] ends = ends(row, grey, own);
        float[] tones = new float[own.width * own.height];
        for (int y = 0; y < own.height; y++) {
            for (int x = 0; x < own.width; x++) {
                int px = x + row.x0() - EDGE;
                int py = y + row.y0() - EDGE;
                boolean ink = own.get(x, y) && grey.isInBounds(px, py);
                float tone = ink ? (at(grey, px, py) - ends[0]) * 255f / Math.max(1, ends[1] - ends[0]) : 255;
                tones[y * own.width + x] = Math.max(0, Math.min(255, tone));
            }
        }
        return new Patch(row.x0() - EDGE, row.y0() - EDGE, own.width, own.height, tones);
    }

    /** Between pixels of the scan. */
    int tone(double px, double py) {
        int x = (int) Math.floor(px - 0.5);
        int y = (int) Math.floor(py - 0.5);
        double u = px - 0.5 - x;
        double v = py - 0.5 - y;
        double top = (1 - u) * get(x, y) + u * get(x + 1, y);
        double low = (1 - u) * get(x, y + 1) + u * get(x + 1, y + 1);
        return (int) Math.round((1 - v) * top + v * low);
    }

    private double get(int px, int py) {
        int x = px - x0;
        int y = py - y0;
        return x < 0 || y < 0 || x >= width || y >= height ? 255 : tones[y * width + x];
    }

    private static int at(GrayU8 grey, int x, int y) {
        return grey.data[grey.startIndex + y * grey.stride + x] & 0xFF;
    }

    /** The row's ink, two pixels wider all around. */
    private static Bits own(TextRow row) {
        Bits own = new Bits(row.x1() - row.x0() + 2 * EDGE + 1, row.y1() - row.y0() + 2 * EDGE + 1);
        for (Blob b : row.blobs()) {
            int[] r = b.runs();
            for (int i = 0; i < r.length; i += 3) {
                int y = r[i] - row.y0() + EDGE;
                for (int dy = -2; dy <= 2; dy++) {
                    own.fill(y + dy, r[i + 1] - row.x0() + EDGE - 2, r[i + 2] - row.x0() + EDGE + 2, true);
                }
            }
        }
        return own;
    }

    /** The darkest ink and the paper around it. */
    private static int[] ends(TextRow row, GrayU8 grey, Bits own) {
        int[] histogram = new int[256];
        int n = 0;
        for (int y = row.y0() - 2; y < row.y1() + 2; y++) {
            for (int x = row.x0() - 2; x < row.x1() + 2; x++) {
                if (grey.isInBounds(x, y) && own.get(x - row.x0() + EDGE, y - row.y0() + EDGE)) {
                    histogram[at(grey, x, y)]++;
                    n++;
                }
            }
        }
        return new int[] {quantile(histogram, n / 20), quantile(histogram, n - n / 12)};
    }

    private static int quantile(int[] histogram, int count) {
        int left = count;
        int tone = 0;
        while (tone < 255 && (left -= histogram[tone]) >= 0) {
            tone++;
        }
        return tone;
    }
}
