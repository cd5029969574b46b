package linewalk.renderer.overlay;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/**
 * Where an original is dark, counted once, so that the share of any rectangle is four look-ups. Works alike for text,
 * line work and scans.
 */
final class InkMap {

    static final InkMap BLANK = new InkMap(new int[1][1], 1, 1);

    private static final int DARK_BELOW = 225;

    private final int[][] sums;
    private final double pixelsPerPtX;
    private final double pixelsPerPtY;

    private InkMap(int[][] sums, double pixelsPerPtX, double pixelsPerPtY) {
        this.sums = sums;
        this.pixelsPerPtX = pixelsPerPtX;
        this.pixelsPerPtY = pixelsPerPtY;
    }

    /** Of a grey picture of the whole page. */
    static InkMap of(BufferedImage picture, double pageWidthPt, double pageHeightPt) {
        int w = picture.getWidth();
        int h = picture.getHeight();
        int[][] sums = new int[h + 1][w + 1];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int dark = picture.getRaster().getSample(x, y, 0) < DARK_BELOW ? 1 : 0;
                sums[y + 1][x + 1] = dark + sums[y][x + 1] + sums[y + 1][x] - sums[y][x];
            }
        }
        return new InkMap(sums, w / pageWidthPt, h / pageHeightPt);
    }

    /** 0 white to 1 black. */
    double share(Rectangle2D placePt) {
        int x0 = within(Math.floor(placePt.getMinX() * pixelsPerPtX), sums[0].length);
        int x1 = within(Math.ceil(placePt.getMaxX() * pixelsPerPtX), sums[0].length);
        int y0 = within(Math.floor(placePt.getMinY() * pixelsPerPtY), sums.length);
        int y1 = within(Math.ceil(placePt.getMaxY() * pixelsPerPtY), sums.length);
        int area = (x1 - x0) * (y1 - y0);
        return area == 0 ? 0 : (double) (sums[y1][x1] - sums[y0][x1] - sums[y1][x0] + sums[y0][x0]) / area;
    }

    private static int within(double at, int length) {
        return (int) Math.max(0, Math.min(length - 1, at));
    }
}
