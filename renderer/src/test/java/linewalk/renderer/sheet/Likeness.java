package linewalk.renderer.sheet;

import java.awt.image.BufferedImage;

/**
 * How far two pictures of the same page differ, made by two programs: neither edges nor greys of thin lines are the same
 * to the dot, but every stroke must be in both, and every patch must have the same colour.
 *
 * @param strokes the larger share of either one's dark dots that have nothing dark near them in the other
 * @param patch the largest difference of any patch's mean red, green or blue, of 255
 */
public record Likeness(double strokes, double patch) {

    private static final int DARK = 110;
    private static final int DARKISH = 200;
    private static final int NEAR_DOTS = 2;
    private static final int PATCH_DOTS = 24;

    /** @throws IllegalArgumentException sizes differ by more than a dot */
    public static Likeness of(BufferedImage a, BufferedImage b) {
        if (Math.abs(a.getWidth() - b.getWidth()) > 1 || Math.abs(a.getHeight() - b.getHeight()) > 1) {
            throw new IllegalArgumentException(
                    a.getWidth() + " x " + a.getHeight() + " and " + b.getWidth() + " x " + b.getHeight());
        }
        return new Likeness(Math.max(missing(a, b), missing(b, a)), patch(a, b));
    }

    private static double missing(BufferedImage a, BufferedImage b) {
        int dark = 0;
        int missing = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                if (grey(a, x, y) < DARK) {
                    dark++;
                    missing += isDarkNear(b, x, y) ? 0 : 1;
                }
            }
        }
        return dark == 0 ? 0 : (double) missing / dark;
    }

    private static boolean isDarkNear(BufferedImage image, int x, int y) {
        for (int dy = -NEAR_DOTS; dy <= NEAR_DOTS; dy++) {
            for (int dx = -NEAR_DOTS; dx <= NEAR_DOTS; dx++) {
                int px = x + dx;
                int py = y + dy;
                if (px >= 0
                        && py >= 0
                        && px < image.getWidth()
                        && py < image.getHeight()
                        && grey(image, px, py) < DARKISH) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int grey(BufferedImage image, int x, int y) {
        int rgb = image.getRGB(x, y);
        return (30 * (rgb >> 16 & 0xFF) + 59 * (rgb >> 8 & 0xFF) + 11 * (rgb & 0xFF)) / 100;
    }

    private static double patch(BufferedImage a, BufferedImage b) {
        double most = 0;
        for (int y = 0; y + PATCH_DOTS < Math.min(a.getHeight(), b.getHeight()); y += PATCH_DOTS) {
            for (int x = 0; x + PATCH_DOTS < Math.min(a.getWidth(), b.getWidth()); x += PATCH_DOTS) {
                for (int shift = 0; shift <= 16; shift += 8) {
                    most = Math.max(most, Math.abs(mean(a, x, y, shift) - mean(b, x, y, shift)));
                }
            }
        }
        return most;
    }

    private static double mean(BufferedImage image, int x0, int y0, int shift) {
        long sum = 0;
        for (int y = y0; y < y0 + PATCH_DOTS; y++) {
            for (int x = x0; x < x0 + PATCH_DOTS; x++) {
                sum += image.getRGB(x, y) >> shift & 0xFF;
            }
        }
        return (double) sum / (PATCH_DOTS * PATCH_DOTS);
    }
}
