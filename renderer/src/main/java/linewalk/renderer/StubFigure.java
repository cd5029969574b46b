package linewalk.renderer;

import linewalk.renderer.ink.LineStyle;
import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.iso.Side;
import linewalk.renderer.scheme.Figure;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** A branch that leaves what is shown: a short line broken off, and where it goes in words. */
final class StubFigure implements Figure {

    static final String PORT = "stub";

    private static final double LEAD_PT = 12;
    private static final double HALF_BREAK_PT = 6;
    private static final double SLANT_PT = 2;
    private static final double APART_PT = 3.4;

    private final TextStack words;
    private final LineStyle style;
    private final boolean upwards;

    /** @param upwards the branch goes up from what is shown */
    StubFigure(TextStack words, LineStyle style, boolean upwards) {
        this.words = words;
        this.style = style;
        this.upwards = upwards;
    }

    @Override
    public double widthPt() {
        return Math.max(2 * HALF_BREAK_PT, words.widthPt()) + 2;
    }

    @Override
    public double heightPt() {
        return LEAD_PT + 4 + words.heightPt();
    }

    @Override
    public PortPlace place(String port) {
        return new PortPlace(upwards ? Side.BOTTOM : Side.TOP, HALF_BREAK_PT);
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double x = xPt + HALF_BREAK_PT;
        double edge = upwards ? yPt + heightPt() : yPt;
        double end = upwards ? edge - LEAD_PT : edge + LEAD_PT;
        double in = upwards ? APART_PT : -APART_PT;
        style.paint(
                c,
                java.util.List.of(
                        new java.awt.geom.Point2D.Double(x, edge), new java.awt.geom.Point2D.Double(x, end + in)));
        slash(c, x, end + in);
        slash(c, x, end);
        words.paint(c, xPt, upwards ? yPt : end + 4);
    }

    /** Two of them are a line broken off; a bar would be a closed port. */
    static void slash(Canvas c, double xPt, double yPt) {
        c.pen(Ink.BLACK, Ink.line(1.2));
        c.line(xPt - HALF_BREAK_PT, yPt + SLANT_PT, xPt + HALF_BREAK_PT, yPt - SLANT_PT);
    }
}
