package linewalk.samples.sheet;

import linewalk.samples.symbol.Ink;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.Pen;

/** Ink in drawing units or millimetres on a canvas in points. */
record ScaledInk(Canvas canvas, double scale, double x0Pt, double y0Pt) implements Ink {
    static ScaledInk units(Canvas canvas, Placement at) {
        return new ScaledInk(canvas, at.style().unitPt(), at.xPt(0), at.yPt(0));
    }

    static ScaledInk millimetres(Canvas canvas) {
        return new ScaledInk(canvas, Placement.pt(1), 0, 0);
    }

    /** Of a text in this ink's measure. */
    double width(String text, double height, boolean bold) {
        return canvas.fonts().width(text, height, bold);
    }

    ScaledInk as(DrawnText.Role role) {
        canvas.as(role);
        return this;
    }

    @Override
    public void line(Pen pen, double... xy) {
        canvas.line(pen, scaled(xy));
    }

    @Override
    public void closed(Pen pen, double... xy) {
        canvas.closed(pen, scaled(xy));
    }

    @Override
    public void circle(Pen pen, double x, double y, double radius) {
        canvas.circle(pen, x0Pt + x * scale, y0Pt + y * scale, radius * scale);
    }

    @Override
    public void fill(double... xy) {
        canvas.fill(scaled(xy));
    }

    @Override
    public void head(double... xy) {
        canvas.head(scaled(xy));
    }

    /** Half a circle around a crossing, over it, or to its right where the line is upright. */
    void hop(Pen pen, double x, double y, double radius, boolean upright) {
        canvas.hop(pen, x0Pt + x * scale, y0Pt + y * scale, radius * scale, upright);
    }

    @Override
    public void dot(double x, double y, double radius) {
        canvas.dot(x0Pt + x * scale, y0Pt + y * scale, radius * scale);
    }

    @Override
    public void text(Lettering lettering, double x, double y, String text) {
        Lettering scaled =
                new Lettering(lettering.height() * scale, lettering.bold(), lettering.align(), lettering.turned());
        canvas.text(scaled, x0Pt + x * scale, y0Pt + y * scale, text);
    }

    private double[] scaled(double... xy) {
        double[] out = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            out[i] = x0Pt + xy[i] * scale;
            out[i + 1] = y0Pt + xy[i + 1] * scale;
        }
        return out;
    }
}
