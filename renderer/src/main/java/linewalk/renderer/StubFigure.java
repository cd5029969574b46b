package linewalk.renderer;

import linewalk.renderer.ink.LineStyle;
import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.iso.Side;
import linewalk.renderer.scheme.Figure;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** A branch that leaves what is shown: a short line to a bar, and where it goes in words. */
final class StubFigure implements Figure {

    static final String PORT = "stub";

    private static final double LEAD_PT = 12;
    private static final double HALF_BAR_PT = 6;

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
        return Math.max(2 * HALF_BAR_PT, words.widthPt()) + 2;
    }

    @Override
    public double heightPt() {
        return LEAD_PT + 4 + words.heightPt();
    }

    @Override
    public PortPlace place(String port) {
        return new PortPlace(upwards ? Side.BOTTOM : Side.TOP, HALF_BAR_PT);
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double x = xPt + HALF_BAR_PT;
        double edge = upwards ? yPt + heightPt() : yPt;
        double bar = upwards ? edge - LEAD_PT : edge + LEAD_PT;
        style.paint(
                c,
                java.util.List.of(new java.awt.geom.Point2D.Double(x, edge), new java.awt.geom.Point2D.Double(x, bar)));
        c.pen(Ink.BLACK, Ink.line(1.6));
        c.line(x - HALF_BAR_PT, bar, x + HALF_BAR_PT, bar);
        words.paint(c, xPt, upwards ? yPt : bar + 4);
    }
}
