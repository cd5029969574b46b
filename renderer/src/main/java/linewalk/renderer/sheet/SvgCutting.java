package linewalk.renderer.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.w3c.dom.Element;

/**
 * A cutting in SVG: strokes and fills as such, letters as outlines. One that holds a scan, a pattern or anything else that
 * SVG has no plain word for becomes a picture of the part that is seen.
 */
final class SvgCutting {

    private static final int DPI = 300;
    /** The renderer paints groups and thin lines by the dots of what it paints on. */
    private static final double DOTS_PER_PT = DPI / 72.0;

    private final Cutting cutting;
    private final SVGGeneratorContext context;

    SvgCutting(Cutting cutting, SVGGeneratorContext context) {
        this.cutting = cutting;
        this.context = context;
    }

    Element element() throws IOException {
        VectorGraphics g = new VectorGraphics(
                context,
                AffineTransform.getScaleInstance(DOTS_PER_PT, DOTS_PER_PT)
                        .createTransformedShape(cutting.clip())
                        .getBounds2D());
        g.scale(DOTS_PER_PT, DOTS_PER_PT);
        cutting.paint(g);
        return g.isPlain() ? strokes(g) : picture();
    }

    private Element strokes(VectorGraphics g) {
        Element scaled = SvgSheet.element(context, "g");
        scaled.setAttribute("transform", "scale(" + 1 / DOTS_PER_PT + ")");
        scaled.appendChild(SvgSheet.group(context, g));
        return scaled;
    }

    private Element picture() throws IOException {
        Rectangle2D clip = cutting.clip();
        int width = (int) Math.ceil(clip.getWidth() * DOTS_PER_PT);
        int height = (int) Math.ceil(clip.getHeight() * DOTS_PER_PT);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.setBackground(Color.WHITE);
        g.scale(DOTS_PER_PT, DOTS_PER_PT);
        g.translate(-clip.getX(), -clip.getY());
        cutting.paint(g);
        g.dispose();
        Element e = SvgSheet.element(context, "image");
        e.setAttribute("x", String.valueOf(clip.getX()));
        e.setAttribute("y", String.valueOf(clip.getY()));
        e.setAttribute("width", String.valueOf(width / DOTS_PER_PT));
        e.setAttribute("height", String.valueOf(height / DOTS_PER_PT));
        e.setAttributeNS("http://www.w3.org/1999/xlink", "xlink:href", "data:image/png;base64," + png(image));
        return e;
    }

    private static String png(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PngStream png = new PngStream(bytes, image.getWidth(), image.getHeight(), DPI, "Original");
        png.rows(image, image.getHeight());
        png.finish();
        return Base64.getEncoder().encodeToString(bytes.toByteArray());
    }
}
