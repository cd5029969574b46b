package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.List;
import java.util.function.Predicate;
import linewalk.importer.ocr.Crop;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.ocr.ReadLetter;
import linewalk.importer.page.Marks;

/** A small page of paper, 300 dpi, drawn on in pixels. */
final class Sketch {

    static final double PX_PER_PT = 300 / 72.0;

    private final BufferedImage image = new BufferedImage(1400, 1000, BufferedImage.TYPE_BYTE_GRAY);
    private final Graphics2D pen = image.createGraphics();

    Sketch() {
        this(0);
    }

    Sketch(double skewDeg) {
        pen.setColor(new Color(240, 240, 240));
        pen.fillRect(0, 0, 1400, 1000);
        pen.setColor(Color.BLACK);
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.rotate(Math.toRadians(skewDeg), 700, 500);
        // a frame, so that there is something to register on
        stroke(6, new java.awt.Rectangle(60, 60, 1280, 880));
    }

    Sketch stroke(double width, Shape shape) {
        pen.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        pen.draw(shape);
        return this;
    }

    Sketch fill(Shape shape) {
        pen.fill(shape);
        return this;
    }

    Sketch line(double width, double x0, double y0, double x1, double y1) {
        return stroke(width, new Line2D.Double(x0, y0, x1, y1));
    }

    Sketch circle(double width, double x, double y, double r) {
        return stroke(width, new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
    }

    /** A round place without ink. */
    Sketch paper(double x, double y, double r) {
        pen.setColor(new Color(240, 240, 240));
        dot(x, y, r);
        pen.setColor(Color.BLACK);
        return this;
    }

    Sketch dot(double x, double y, double r) {
        pen.fill(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
        return this;
    }

    Sketch solid(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        pen.fill(path);
        return this;
    }

    Sketch text(String text, double x, double y, double size) {
        return text(text, x, y, size, Font.SANS_SERIF);
    }

    /** Inclined by 15 degrees (ISO 3098). */
    Sketch inclined(String text, double x, double y, double size) {
        AffineTransform lean = AffineTransform.getShearInstance(-Math.tan(Math.toRadians(15)), 0);
        Font font = new Font(Font.SANS_SERIF, Font.PLAIN, (int) size).deriveFont(lean);
        GlyphVector line = font.createGlyphVector(new FontRenderContext(null, true, true), text);
        return fill(line.getOutline((float) x, (float) y));
    }

    Sketch text(String text, double x, double y, double size, String family) {
        pen.setFont(new Font(family, Font.PLAIN, 1).deriveFont((float) size));
        pen.drawString(text, (float) x, (float) y);
        return this;
    }

    BufferedImage image() {
        return image;
    }

    GrayU8 grey() {
        return grey(image);
    }

    static GrayU8 grey(BufferedImage image) {
        GrayU8 grey = new GrayU8(image.getWidth(), image.getHeight());
        System.arraycopy(
                ((DataBufferByte) image.getRaster().getDataBuffer()).getData(), 0, grey.data, 0, grey.data.length);
        return grey;
    }

    /** Without reading letters. */
    Marks marks() {
        return read(grey(), new Blind()).marks();
    }

    static ScanReader.Upturned read(GrayU8 grey, LetterReader reader) {
        return read(grey, reader, text -> false);
    }

    /** @param words that the drawing has */
    static ScanReader.Upturned read(GrayU8 grey, LetterReader reader, Predicate<String> words) {
        try {
            return new ScanReader(grey, PX_PER_PT, reader, words).read();
        } catch (ScanReader.Unreadable e) {
            throw new AssertionError(e);
        }
    }

    private static final class Blind implements LetterReader {
        @Override
        public List<ReadLetter> line(Crop crop) {
            return List.of();
        }

        @Override
        public void close() {}
    }
}
