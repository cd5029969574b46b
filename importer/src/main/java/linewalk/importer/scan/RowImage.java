package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import linewalk.importer.ocr.Crop;

/**
 * One row of text cut out of the scan: turned upright, brought to the letter height that is read best, with nothing but
 * the row's own ink on it.
 *
 * @param cap letter height in the crop
 * @param baseline its row in the crop
 */
record RowImage(Crop crop, double x0, double y0, double scale, double cap, double baseline) {

    private static final double LETTER_PX = 35;
    private static final int MARGIN = 12;

    /** @param upright turned so that the row reads from left to right */
    static RowImage of(TextRow row, GrayU8 grey, Upright upright) {
        double[] box = box(row, upright);
        double scale = LETTER_PX / cap(row, upright);
        int width = (int) Math.ceil((box[2] - box[0]) * scale) + 2 * MARGIN;
        int height = (int) Math.ceil((box[3] - box[1]) * scale) + 2 * MARGIN;
        double x0 = box[0] - MARGIN / scale;
        double y0 = box[1] - MARGIN / scale;
        Bits own = own(row);
        byte[] out = new byte[width * height];
        int[] tones = tones(row, grey, own);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                out[y * width + x] = (byte)
                        tone(row, grey, own, upright, x0 + (x + 0.5) / scale, y0 + (y + 0.5) / scale, tones, scale);
            }
        }
        double baseline = (baseline(row, upright) - y0) * scale;
        return new RowImage(new Crop(width, height, out), x0, y0, scale, cap(row, upright) * scale, baseline);
    }

    /** The row set several times side by side. */
    Crop repeated(int times) {
        int step = crop.widthPx() - MARGIN - MARGIN / 2;
        int width = step * (times - 1) + crop.widthPx();
        byte[] out = new byte[width * crop.heightPx()];
        java.util.Arrays.fill(out, (byte) 255);
        for (int i = 0; i < times; i++) {
            for (int y = 0; y < crop.heightPx(); y++) {
                for (int x = 0; x < crop.widthPx(); x++) {
                    int at = y * width + i * step + x;
                    int tone = crop.grey()[y * crop.widthPx() + x] & 0xFF;
                    out[at] = (byte) Math.min(out[at] & 0xFF, tone);
                }
            }
        }
        return new Crop(width, crop.heightPx(), out);
    }

    double cropX(double x) {
        return (x - x0) * scale;
    }

    double y(double cropY) {
        return y0 + cropY / scale;
    }

    private static int tone(
            TextRow row, GrayU8 grey, Bits own, Upright upright, double x, double y, int[] tones, double scale) {
        if (scale > 0.7) {
            return sample(row, grey, own, upright.backX(x, y), upright.backY(x, y), tones);
        }
        int n = (int) Math.ceil(1 / scale);
        double sum = 0;
        for (int i = 0; i < n * n; i++) {
            double sx = x + ((i % n + 0.5) / n - 0.5) / scale;
            double sy = y + ((i / n + 0.5) / n - 0.5) / scale;
            sum += sample(row, grey, own, upright.backX(sx, sy), upright.backY(sx, sy), tones);
        }
        return (int) Math.round(sum / (n * n));
    }

    private static int sample(TextRow row, GrayU8 grey, Bits own, double px, double py, int[] tones) {
        int x = (int) Math.floor(px - 0.5);
        int y = (int) Math.floor(py - 0.5);
        double u = px - 0.5 - x;
        double v = py - 0.5 - y;
        double top = (1 - u) * at(row, grey, own, x, y, tones) + u * at(row, grey, own, x + 1, y, tones);
        double low = (1 - u) * at(row, grey, own, x, y + 1, tones) + u * at(row, grey, own, x + 1, y + 1, tones);
        return (int) Math.round((1 - v) * top + v * low);
    }

    /** Paper where other ink is; ink black, paper white, whatever the scan made of them. */
    private static double at(TextRow row, GrayU8 grey, Bits own, int x, int y, int[] tones) {
        if (!own.get(x - row.x0() + 3, y - row.y0() + 3) || !grey.isInBounds(x, y)) {
            return 255;
        }
        double tone = (grey.data[grey.startIndex + y * grey.stride + x] & 0xFF) - tones[0];
        return Math.max(0, Math.min(255, tone * 255 / Math.max(1, tones[1] - tones[0])));
    }

    /** The row's ink, two pixels wider all around. */
    private static Bits own(TextRow row) {
        Bits own = new Bits(row.x1() - row.x0() + 7, row.y1() - row.y0() + 7);
        for (Blob b : row.blobs()) {
            int[] r = b.runs();
            for (int i = 0; i < r.length; i += 3) {
                int y = r[i] - row.y0() + 3;
                for (int dy = -2; dy <= 2; dy++) {
                    own.fill(y + dy, r[i + 1] - row.x0() + 1, r[i + 2] - row.x0() + 5, true);
                }
            }
        }
        return own;
    }

    /** The darkest ink and the paper around it. */
    private static int[] tones(TextRow row, GrayU8 grey, Bits own) {
        int[] histogram = new int[256];
        int n = 0;
        for (int y = row.y0() - 2; y < row.y1() + 2; y++) {
            for (int x = row.x0() - 2; x < row.x1() + 2; x++) {
                if (grey.isInBounds(x, y) && own.get(x - row.x0() + 3, y - row.y0() + 3)) {
                    histogram[grey.data[grey.startIndex + y * grey.stride + x] & 0xFF]++;
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

    private static double[] box(TextRow row, Upright upright) {
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Blob b : row.blobs()) {
            double[] one = box(b, upright);
            box[0] = Math.min(box[0], one[0]);
            box[1] = Math.min(box[1], one[1]);
            box[2] = Math.max(box[2], one[2]);
            box[3] = Math.max(box[3], one[3]);
        }
        return box;
    }

    /** A blob is small: turning its box by a degree or two is as good as turning its ink. */
    static double[] box(Blob b, Upright upright) {
        double mx = upright.x(b.middleX(), b.middleY());
        double my = upright.y(b.middleX(), b.middleY());
        boolean lying = Math.abs(upright.forth().a()) > 0.7;
        double w = (lying ? b.width() : b.height()) / 2.0;
        double h = (lying ? b.height() : b.width()) / 2.0;
        return new double[] {mx - w, my - h, mx + w, my + h};
    }

    private static double cap(TextRow row, Upright upright) {
        double[] heights = row.blobs().stream()
                .mapToDouble(b -> box(b, upright)[3] - box(b, upright)[1])
                .sorted()
                .toArray();
        double most = heights[heights.length - 1];
        double[] tall =
                java.util.Arrays.stream(heights).filter(h -> h > 0.8 * most).toArray();
        return tall[tall.length / 2];
    }

    private static double baseline(TextRow row, Upright upright) {
        double cap = cap(row, upright);
        double[] feet = row.blobs().stream()
                .filter(b -> box(b, upright)[3] - box(b, upright)[1] > 0.6 * cap)
                .mapToDouble(b -> box(b, upright)[3])
                .sorted()
                .toArray();
        return feet[feet.length / 2];
    }
}
