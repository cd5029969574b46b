package linewalk.renderer.sheet;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSName;

/** Plain strokes and lettering on a {@link Graphics2D}. Remembers pen and colour until they are changed. */
public final class Canvas {

    private final Graphics2D g;
    private final PdfLayers layers;

    public Canvas(Graphics2D g) {
        this(g, null);
    }

    /** @param layers of the PDF drawn into; null where the format has none */
    Canvas(Graphics2D g, PdfLayers layers) {
        this.g = g;
        this.layers = layers;
    }

    /** The same layers on other graphics. */
    Canvas on(Graphics2D other) {
        return new Canvas(other, layers);
    }

    /** Draws on a layer that a viewer can show and hide; plainly where the format has no layers. */
    public void layer(String name, Consumer<Canvas> drawing) {
        if (layers != null && g instanceof PdfBoxGraphics2D pdf) {
            pdf.drawInMarkedContentSequence(COSName.OC, layers.get(name), inside -> drawing.accept(on(inside)));
        } else {
            drawing.accept(this);
        }
    }

    Graphics2D graphics() {
        return g;
    }

    public Canvas pen(Color color, Stroke stroke) {
        g.setColor(color);
        g.setStroke(stroke);
        return this;
    }

    /** Draws in a space of its own, moved and enlarged. */
    public void in(double xPt, double yPt, double scale, Consumer<Canvas> drawing) {
        AffineTransform before = g.getTransform();
        g.translate(xPt, yPt);
        g.scale(scale, scale);
        drawing.accept(this);
        g.setTransform(before);
    }

    public void draw(Shape shape) {
        g.draw(shape);
    }

    public void fill(Color color, Shape shape) {
        Color before = g.getColor();
        g.setColor(color);
        g.fill(shape);
        g.setColor(before);
    }

    public void line(double x0Pt, double y0Pt, double x1Pt, double y1Pt) {
        g.draw(new Line2D.Double(x0Pt, y0Pt, x1Pt, y1Pt));
    }

    public void polyline(List<Point2D> points) {
        if (points.size() > 1) {
            g.draw(path(points, false));
        }
    }

    public void polygon(Color fill, double... xyPt) {
        fill(fill, path(xyPt, true));
    }

    public void outline(double... xyPt) {
        g.draw(path(xyPt, true));
    }

    public void lines(double... xyPt) {
        g.draw(path(xyPt, false));
    }

    public void rect(double xPt, double yPt, double widthPt, double heightPt) {
        g.draw(new Rectangle2D.Double(xPt, yPt, widthPt, heightPt));
    }

    public void circle(double xPt, double yPt, double radiusPt) {
        g.draw(disc(xPt, yPt, radiusPt));
    }

    public static Shape disc(double xPt, double yPt, double radiusPt) {
        return new Ellipse2D.Double(xPt - radiusPt, yPt - radiusPt, 2 * radiusPt, 2 * radiusPt);
    }

    /** A filled arrow head with its tip at a point, in a direction given by any vector along it. */
    public void arrow(double xPt, double yPt, double dx, double dy, double lengthPt) {
        double n = Math.hypot(dx, dy);
        if (n == 0) {
            return;
        }
        double ux = dx / n * lengthPt;
        double uy = dy / n * lengthPt;
        double w = 0.38;
        fill(
                g.getColor(),
                path(
                        new double[] {
                            xPt, yPt, xPt - ux - uy * w, yPt - uy + ux * w, xPt - ux + uy * w, yPt - uy - ux * w
                        },
                        true));
    }

    /** Left aligned on its baseline. */
    public void text(String text, double xPt, double baselinePt, double sizePt) {
        g.setFont(Lettering.font(sizePt));
        g.drawString(Lettering.printable(text), (float) xPt, (float) baselinePt);
    }

    /** Centred on a point, capitals standing evenly about it. */
    public void textAround(String text, double xPt, double yPt, double sizePt) {
        text(text, xPt - Lettering.widthPt(text, sizePt) / 2, yPt + Lettering.CAP_HEIGHT * sizePt / 2, sizePt);
    }

    private static Path2D path(double[] xyPt, boolean close) {
        Path2D p = new Path2D.Double();
        p.moveTo(xyPt[0], xyPt[1]);
        for (int i = 2; i < xyPt.length; i += 2) {
            p.lineTo(xyPt[i], xyPt[i + 1]);
        }
        if (close) {
            p.closePath();
        }
        return p;
    }

    private static Path2D path(List<Point2D> points, boolean close) {
        double[] xy = new double[points.size() * 2];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).getX();
            xy[2 * i + 1] = points.get(i).getY();
        }
        return path(xy, close);
    }
}
