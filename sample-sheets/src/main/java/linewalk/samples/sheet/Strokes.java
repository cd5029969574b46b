package linewalk.samples.sheet;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.List;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.symbol.Pen;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** What the drawing program writes for a line: here a stroke each. Points of the page as displayed, y up. */
class Strokes {
    private static final double CIRCLE = 0.5523;

    final PDPageContentStream content;
    final DraftingStyle style;

    Strokes(PDPageContentStream content, DraftingStyle style) {
        this.content = content;
        this.style = style;
    }

    static Strokes of(PDPageContentStream content, DraftingStyle style) {
        return switch (style.lineWork()) {
            case STROKES, HOPS -> new Strokes(content, style);
            case PIECES -> new PieceStrokes(content, style);
            case BARS -> new BarStrokes(content, style);
        };
    }

    void line(Pen pen, double... xy) throws IOException {
        dress(pen);
        path(xy);
        content.stroke();
    }

    void closed(Pen pen, double... xy) throws IOException {
        dress(pen);
        path(xy);
        content.closeAndStroke();
    }

    void fill(double... xy) throws IOException {
        path(xy);
        content.fill();
    }

    /** An arrowhead: tip and two corners. */
    void head(double... xy) throws IOException {
        fill(xy);
    }

    void circle(Pen pen, double x, double y, double radius) throws IOException {
        dress(pen);
        round(x, y, radius);
        content.closeAndStroke();
    }

    void dot(double x, double y, double radius) throws IOException {
        round(x, y, radius);
        content.fill();
    }

    /** The upper half of a circle, or its right half. */
    void half(Pen pen, double x, double y, double r, boolean upright) throws IOException {
        double k = r * CIRCLE;
        dress(pen);
        if (upright) {
            content.moveTo((float) x, (float) (y + r));
            curve(x + k, y + r, x + r, y + k, x + r, y);
            curve(x + r, y - k, x + k, y - r, x, y - r);
        } else {
            content.moveTo((float) (x - r), (float) y);
            curve(x - r, y + k, x - k, y + r, x, y + r);
            curve(x + k, y + r, x + r, y + k, x + r, y);
        }
        content.stroke();
    }

    /** Letters as their strokes: one path for all of them or one each. */
    void letters(double widthPt, boolean onePath, List<List<double[]>> letters) throws IOException {
        content.setLineWidth((float) widthPt);
        content.setLineDashPattern(new float[0], 0);
        for (List<double[]> letter : letters) {
            for (double[] stroke : letter) {
                path(stroke);
            }
            if (!onePath && !letter.isEmpty()) {
                content.stroke();
            }
        }
        if (onePath) {
            content.stroke();
        }
    }

    /** Letters as the outlines of their faces, a path each. */
    void painted(List<Path2D> letters) throws IOException {
        for (Path2D letter : letters) {
            double[] p = new double[6];
            for (PathIterator it = letter.getPathIterator(null); !it.isDone(); it.next()) {
                switch (it.currentSegment(p)) {
                    case PathIterator.SEG_MOVETO -> content.moveTo((float) p[0], (float) p[1]);
                    case PathIterator.SEG_LINETO -> content.lineTo((float) p[0], (float) p[1]);
                    case PathIterator.SEG_CUBICTO -> curve(p[0], p[1], p[2], p[3], p[4], p[5]);
                    case PathIterator.SEG_CLOSE -> content.closePath();
                    default -> throw new IllegalArgumentException("outlines have no curves of second order");
                }
            }
            content.fill();
        }
    }

    private void dress(Pen pen) throws IOException {
        content.setLineWidth((float) widthPt(pen));
        content.setLineDashPattern(dashes(pen), 0);
    }

    final double widthPt(Pen pen) {
        double widthPt = Placement.pt(style.lineWidthMm());
        return switch (pen) {
            case WORKING -> widthPt;
            case OUTLINE -> widthPt * 0.8;
            case FRAME -> widthPt * 1.4;
            case THIN, PILOT, DRAIN, INNER_PILOT, CHAIN -> widthPt * 0.55;
        };
    }

    /** Dash, gap, dash, gap in points; empty for a full line. */
    final float[] dashes(Pen pen) {
        double unit = style.unitPt();
        return switch (pen) {
            case PILOT -> scaled(unit, 0.42, 0.16);
            case DRAIN -> scaled(unit, 0.18, 0.12);
            case INNER_PILOT -> scaled(unit, 0.13, 0.08);
            case CHAIN -> scaled(unit, 0.7, 0.14, 0.1, 0.14);
            default -> new float[0];
        };
    }

    private static float[] scaled(double unit, double... lengths) {
        float[] out = new float[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            out[i] = (float) (lengths[i] * unit);
        }
        return out;
    }

    final void path(double... xy) throws IOException {
        content.moveTo((float) xy[0], (float) xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            content.lineTo((float) xy[i], (float) xy[i + 1]);
        }
    }

    private void round(double x, double y, double r) throws IOException {
        double k = r * CIRCLE;
        content.moveTo((float) (x + r), (float) y);
        curve(x + r, y + k, x + k, y + r, x, y + r);
        curve(x - k, y + r, x - r, y + k, x - r, y);
        curve(x - r, y - k, x - k, y - r, x, y - r);
        curve(x + k, y - r, x + r, y - k, x + r, y);
    }

    /** The path of a quarter of a circle: 0 from the right to the top, then on. */
    final void quarter(double x, double y, double r, int quarter) throws IOException {
        double c = Math.round(Math.cos(quarter * Math.PI / 2));
        double s = Math.round(Math.sin(quarter * Math.PI / 2));
        double k = CIRCLE;
        content.moveTo((float) (x + r * c), (float) (y + r * s));
        curve(x + r * (c - k * s), y + r * (s + k * c), x + r * (k * c - s), y + r * (k * s + c), x - r * s, y + r * c);
    }

    private void curve(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        content.curveTo((float) x1, (float) y1, (float) x2, (float) y2, (float) x3, (float) y3);
    }
}
