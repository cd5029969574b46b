package linewalk.samples.scan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Random;

/**
 * One page as scanned: laid askew, blurred by the lens, on paper with a shadow, a fold, grain and specks.
 *
 * @param skewDeg clockwise, around the middle of the page
 * @param quarters turned so many quarters clockwise, after that
 */
record Paper(double skewDeg, int quarters, boolean bitonal, long seed) {

    private static final int WHITE = 238;
    private static final double GRAIN = 5;
    private static final double SPECKS_PER_MEGAPIXEL = 6;

    /** From points of the drawn page to points of the scanned one. */
    AffineTransform transform(double widthPt, double heightPt) {
        AffineTransform t = new AffineTransform();
        boolean lying = quarters % 2 == 0;
        t.translate((lying ? widthPt : heightPt) / 2, (lying ? heightPt : widthPt) / 2);
        t.quadrantRotate(quarters);
        t.rotate(Math.toRadians(skewDeg));
        t.translate(-widthPt / 2, -heightPt / 2);
        return t;
    }

    BufferedImage scan(BufferedImage drawn) {
        boolean lying = quarters % 2 == 0;
        int w = lying ? drawn.getWidth() : drawn.getHeight();
        int h = lying ? drawn.getHeight() : drawn.getWidth();
        BufferedImage page = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = page.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, w, h);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(drawn, transform(drawn.getWidth(), drawn.getHeight()), null);
        g.dispose();
        dirty(page);
        return bitonal ? bitonal(page) : page;
    }

    private void dirty(BufferedImage page) {
        Random chance = new Random(seed);
        byte[] px = ((DataBufferByte) page.getRaster().getDataBuffer()).getData();
        int w = page.getWidth();
        int h = page.getHeight();
        byte[] sharp = px.clone();
        double[] lit = lit(w, w / 3 + chance.nextInt(w / 3));
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int at = y * w + x;
                double tone = 0.6 * (sharp[at] & 0xFF)
                        + 0.1 * (tone(sharp, at - 1) + tone(sharp, at + 1) + tone(sharp, at - w) + tone(sharp, at + w));
                px[at] = clamp((WHITE * lit[x] - 25) * tone / 255 + 25 + GRAIN * chance.nextGaussian());
            }
        }
        for (int i = 0; i < SPECKS_PER_MEGAPIXEL * w * h / 1e6; i++) {
            speck(px, w, h, chance);
        }
    }

    /** How bright each column is: the left edge lies in shadow, and a fold runs down the page. */
    private static double[] lit(int w, int fold) {
        double[] lit = new double[w];
        for (int x = 0; x < w; x++) {
            lit[x] = 1 - 0.25 * Math.exp(-x / (0.05 * w)) - 0.12 * Math.exp(-Math.pow((x - fold) / 4.0, 2));
        }
        return lit;
    }

    private static int tone(byte[] px, int at) {
        return px[Math.max(0, Math.min(px.length - 1, at))] & 0xFF;
    }

    private static void speck(byte[] px, int w, int h, Random chance) {
        int cx = chance.nextInt(w);
        int cy = chance.nextInt(h);
        int size = 1 + chance.nextInt(4);
        for (int y = cy; y < Math.min(h, cy + size); y++) {
            for (int x = cx; x < Math.min(w, cx + size); x++) {
                px[y * w + x] = clamp(60 + chance.nextInt(60));
            }
        }
    }

    private static byte clamp(double tone) {
        return (byte) Math.max(0, Math.min(255, Math.round(tone)));
    }

    /** As a scanner set to line art does: one limit for the whole page. */
    private static BufferedImage bitonal(BufferedImage grey) {
        BufferedImage out = new BufferedImage(grey.getWidth(), grey.getHeight(), BufferedImage.TYPE_BYTE_BINARY);
        byte[] px = ((DataBufferByte) grey.getRaster().getDataBuffer()).getData();
        byte[] bits = ((DataBufferByte) out.getRaster().getDataBuffer()).getData();
        int stride = (grey.getWidth() + 7) / 8;
        for (int y = 0; y < grey.getHeight(); y++) {
            for (int x = 0; x < grey.getWidth(); x++) {
                if ((px[y * grey.getWidth() + x] & 0xFF) > 140) {
                    bits[y * stride + x / 8] |= (byte) (0x80 >> x % 8);
                }
            }
        }
        return out;
    }
}
