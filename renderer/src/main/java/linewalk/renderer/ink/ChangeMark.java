package linewalk.renderer.ink;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/**
 * Stands on a line whose class is not what it was in the step before, and beside a valve that stands otherwise: a square, half white and half black, always the
 * same way up, so that it is taken neither for an arrow of the flow nor for a doubt.
 */
public final class ChangeMark {

    /** From side to side. */
    public static final double SIZE_PT = 9;

    private static final double RIM_PT = 1;
    private static final double WHITE_PT = 1.5;

    private ChangeMark() {}

    /** With a white rim that keeps it apart from a heavy line of dark colour. */
    public static void paintOnLine(Canvas c, double xPt, double yPt) {
        double reach = SIZE_PT / 2 + WHITE_PT;
        c.fill(Color.WHITE, new Rectangle2D.Double(xPt - reach, yPt - reach, 2 * reach, 2 * reach));
        paint(c, xPt, yPt);
    }

    public static void paint(Canvas c, double xPt, double yPt) {
        double half = (SIZE_PT - RIM_PT) / 2;
        double x0 = xPt - half;
        double y0 = yPt - half;
        double x1 = xPt + half;
        double y1 = yPt + half;
        c.polygon(Color.WHITE, x0, y0, x1, y0, x1, y1, x0, y1);
        c.pen(Ink.BLACK, Ink.line(RIM_PT));
        c.outline(x0, y0, x1, y0, x1, y1, x0, y1);
        c.polygon(Ink.BLACK, x1, y0, x1, y1, x0, y1);
    }
}
