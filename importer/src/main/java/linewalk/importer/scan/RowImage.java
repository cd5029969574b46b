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

    /**
     * @param upright turned so that the row reads from left to right
     * @param lean of its letters to the right, as a share of their height: they are stood upright
     */
    static RowImage of(TextRow row, GrayU8 grey, Upright upright, double lean) {
        double[] box = box(row, upright);
        double scale = LETTER_PX / cap(row, upright);
        int width = (int) Math.ceil((box[2] - box[0]) * scale) + 2 * MARGIN;
        int height = (int) Math.ceil((box[3] - box[1]) * scale) + 2 * MARGIN;
        double x0 = box[0] - MARGIN / scale;
        double y0 = box[1] - MARGIN / scale;
        byte[] out = new byte[width * height];
        Patch patch = Patch.of(row, grey);
        double middle = middle(row, upright);
        for (int y = 0; y < height; y++) {
            double rowY = y0 + (y + 0.5) / scale;
            double start = x0 - lean * (rowY - middle);
            for (int x = 0; x < width; x++) {
                out[y * width + x] = (byte) tone(patch, upright, start + (x + 0.5) / scale, rowY, scale);
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

    double cropY(double y) {
        return (y - y0) * scale;
    }

    double y(double cropY) {
        return y0 + cropY / scale;
    }

    private static int tone(Patch patch, Upright upright, double x, double y, double scale) {
        if (scale > 0.7) {
            return patch.tone(upright.backX(x, y), upright.backY(x, y));
        }
        int n = (int) Math.ceil(1 / scale);
        double sum = 0;
        for (int i = 0; i < n * n; i++) {
            double sx = x + ((i % n + 0.5) / n - 0.5) / scale;
            double sy = y + ((i / n + 0.5) / n - 0.5) / scale;
            sum += patch.tone(upright.backX(sx, sy), upright.backY(sx, sy));
        }
        return (int) Math.round(sum / (n * n));
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

    static double cap(TextRow row, Upright upright) {
        double[] heights = row.blobs().stream()
                .mapToDouble(b -> box(b, upright)[3] - box(b, upright)[1])
                .sorted()
                .toArray();
        double most = heights[heights.length - 1];
        double[] tall =
                java.util.Arrays.stream(heights).filter(h -> h > 0.8 * most).toArray();
        return tall[tall.length / 2];
    }

    /** At half the height of its capitals: letters that lean are stood upright about it. */
    static double middle(TextRow row, Upright upright) {
        return baseline(row, upright) - cap(row, upright) / 2;
    }

    static double baseline(TextRow row, Upright upright) {
        double cap = cap(row, upright);
        double[] feet = row.blobs().stream()
                .filter(b -> box(b, upright)[3] - box(b, upright)[1] > 0.6 * cap)
                .mapToDouble(b -> box(b, upright)[3])
                .sorted()
                .toArray();
        return feet[feet.length / 2];
    }
}
