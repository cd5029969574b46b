package linewalk.renderer.ink;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import linewalk.renderer.sheet.Canvas;

/** A copy of an A3 print on A4, black and white and nothing between, as a 200 dpi copier makes it. */
record Copy(boolean[][] ink) {

    static final double PX_PER_PT = Math.sqrt(0.5) * 200 / 72;

    /** @param threshold from 0 to 1: what is darker becomes black */
    static Copy of(double widthPt, double heightPt, double threshold, Consumer<Canvas> drawing) {
        BufferedImage grey = grey(widthPt, heightPt, drawing);
        boolean[][] ink = new boolean[grey.getHeight()][grey.getWidth()];
        for (int y = 0; y < ink.length; y++) {
            for (int x = 0; x < ink[y].length; x++) {
                Color c = new Color(grey.getRGB(x, y));
                // the luma of ITU-R BT.601
                double luma = (0.299 * c.getRed() + 0.587 * c.getGreen() + 0.114 * c.getBlue()) / 255;
                ink[y][x] = luma < threshold;
            }
        }
        return new Copy(ink);
    }

    private static BufferedImage grey(double widthPt, double heightPt, Consumer<Canvas> drawing) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(widthPt * PX_PER_PT),
                (int) Math.ceil(heightPt * PX_PER_PT),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.transform(AffineTransform.getScaleInstance(PX_PER_PT, PX_PER_PT));
        drawing.accept(new Canvas(g));
        g.dispose();
        return image;
    }

    Copy turned() {
        boolean[][] turned = new boolean[ink[0].length][ink.length];
        for (int y = 0; y < ink.length; y++) {
            for (int x = 0; x < ink[0].length; x++) {
                turned[x][y] = ink[y][x];
            }
        }
        return new Copy(turned);
    }
}
