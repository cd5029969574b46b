package linewalk.renderer.iso;

import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** Draws in modules, with the one line width of all symbols; lettering stays upright and full size however it is turned. */
final class Pen {

    static final double LINE_PT = 1.3;
    static final double HEAVY_PT = 2.3;
    /** Height of capitals in modules. */
    static final double CAP = Lettering.CAP_HEIGHT * Lettering.TEXT_PT / Symbol.MODULE_PT;

    private static final double HEAD = 1;

    private final Canvas canvas;
    private final AffineTransform toPage;

    private Pen(Canvas canvas, AffineTransform toPage) {
        this.canvas = canvas;
        this.toPage = toPage;
        use(Ink.line(LINE_PT));
    }

    static Pen at(Canvas canvas, double xPt, double yPt) {
        AffineTransform t = AffineTransform.getTranslateInstance(xPt, yPt);
        t.scale(Symbol.MODULE_PT, Symbol.MODULE_PT);
        return new Pen(canvas, t);
    }

    Pen moved(double dx, double dy) {
        AffineTransform t = new AffineTransform(toPage);
        t.translate(dx, dy);
        return new Pen(canvas, t);
    }

    /** Upside down within a height. */
    Pen flipped(boolean really, double height) {
        AffineTransform t = new AffineTransform(toPage);
        if (really) {
            t.translate(0, height);
            t.scale(1, -1);
        }
        return new Pen(canvas, t);
    }

    /** Left and right changed within a width. */
    Pen mirrored(boolean really, double width) {
        AffineTransform t = new AffineTransform(toPage);
        if (really) {
            t.translate(width, 0);
            t.scale(-1, 1);
        }
        return new Pen(canvas, t);
    }

    /** At a point, with upwards turned into a direction, and smaller; lines keep their width. */
    Pen turned(double x, double y, double dx, double dy, double scale) {
        AffineTransform t = new AffineTransform(toPage);
        t.translate(x, y);
        t.rotate(Math.atan2(dx, -dy));
        t.scale(scale, scale);
        return new Pen(canvas, t);
    }

    static double widthOf(String text) {
        return Lettering.widthPt(text, Lettering.TEXT_PT) / Symbol.MODULE_PT;
    }

    private void use(Stroke stroke) {
        canvas.pen(Ink.BLACK, stroke);
    }

    void draw(Shape shape) {
        canvas.draw(toPage.createTransformedShape(shape));
    }

    void fill(Color color, Shape shape) {
        canvas.fill(color, toPage.createTransformedShape(shape));
    }

    void lines(double... xy) {
        draw(path(false, xy));
    }

    void heavy(double... xy) {
        use(Ink.line(HEAVY_PT));
        draw(path(true, xy));
        use(Ink.line(LINE_PT));
    }

    /** Pilot and drain lines. */
    void dashes(double... xy) {
        use(Ink.dashed(LINE_PT, 4, 2.4f));
        draw(path(false, xy));
        use(Ink.line(LINE_PT));
    }

    /** The frame of a unit with more in it than its symbol tells. */
    void chain(double... xy) {
        use(Ink.dashed(LINE_PT, 9, 2.4f, 1.6f, 2.4f));
        draw(path(true, xy));
        use(Ink.line(LINE_PT));
    }

    void outline(double... xy) {
        draw(path(true, xy));
    }

    void rect(double x, double y, double width, double height) {
        outline(x, y, x + width, y, x + width, y + height, x, y + height);
    }

    void solid(double... xy) {
        fill(Ink.BLACK, path(true, xy));
    }

    void circle(double x, double y, double radius) {
        draw(disc(x, y, radius));
    }

    void dot(double x, double y) {
        fill(Ink.BLACK, disc(x, y, 0.38));
    }

    static Shape disc(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    /** Angles in degrees, anticlockwise from the right. */
    void arc(double x, double y, double radius, double start, double extent) {
        draw(new Arc2D.Double(x - radius, y - radius, 2 * radius, 2 * radius, start, extent, Arc2D.OPEN));
    }

    /** A filled head with its tip at a point. */
    void head(double x, double y, double dx, double dy) {
        double n = Math.hypot(dx, dy);
        double ux = dx / n * HEAD;
        double uy = dy / n * HEAD;
        double w = 0.36;
        solid(x, y, x - ux - uy * w, y - uy + ux * w, x - ux + uy * w, y - uy - ux * w);
    }

    /** The line ends under its head, so that the tip stays sharp. */
    void arrow(double x0, double y0, double x1, double y1) {
        double n = Math.hypot(x1 - x0, y1 - y0);
        double s = (n - HEAD / 2) / n;
        lines(x0, y0, x0 + (x1 - x0) * s, y0 + (y1 - y0) * s);
        head(x1, y1, x1 - x0, y1 - y0);
    }

    void text(String text, double x, double y) {
        Point2D p = toPage.transform(new Point2D.Double(x, y), null);
        canvas.textAround(text, p.getX(), p.getY(), Lettering.TEXT_PT);
    }

    void largeText(String text, double x, double y) {
        Point2D p = toPage.transform(new Point2D.Double(x, y), null);
        canvas.textAround(text, p.getX(), p.getY(), 1.5 * Lettering.TEXT_PT);
    }

    void whiteText(String text, double x, double y) {
        canvas.pen(Color.WHITE, Ink.line(LINE_PT));
        text(text, x, y);
        use(Ink.line(LINE_PT));
    }

    private static Path2D path(boolean close, double... xy) {
        Path2D p = new Path2D.Double();
        p.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            p.lineTo(xy[i], xy[i + 1]);
        }
        if (close) {
            p.closePath();
        }
        return p;
    }
}
