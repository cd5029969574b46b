package linewalk.importer.ocr;

import java.awt.image.BufferedImage;

/**
 * A grey raster that holds one upright line of text, dark on light, with a margin around it. Letters of about 35 px are
 * read best.
 *
 * @param grey a byte a pixel, row by row from the top left, 0 is black
 */
public record Crop(int widthPx, int heightPx, byte[] grey) {

    public Crop {
        if (grey.length != widthPx * heightPx) {
            throw new IllegalArgumentException("a raster of " + widthPx + " x " + heightPx + " px has " + grey.length);
        }
    }

    public static Crop of(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        if (image.getType() == BufferedImage.TYPE_BYTE_GRAY) {
            return new Crop(w, h, (byte[]) image.getRaster().getDataElements(0, 0, w, h, null));
        }
        byte[] grey = new byte[w * h];
        int[] row = new int[w];
        for (int y = 0; y < h; y++) {
            image.getRGB(0, y, w, 1, row, 0, w);
            for (int x = 0; x < w; x++) {
                int p = row[x];
                grey[y * w + x] = (byte) ((299 * (p >> 16 & 255) + 587 * (p >> 8 & 255) + 114 * (p & 255)) / 1000);
            }
        }
        return new Crop(w, h, grey);
    }
}
