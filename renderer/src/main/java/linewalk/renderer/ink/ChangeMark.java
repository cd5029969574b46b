package linewalk.renderer.ink;

import java.awt.Color;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/**
 * Stands on a line whose class is not what it was in the step before: a square, half white and half black, always the
 * same way up, so that it is taken neither for an arrow of the flow nor for a doubt.
 */
public final class ChangeMark {

    /** From side to side. */
    public static final double SIZE_PT = 9;

    private static final double RIM_PT = 1;

    private ChangeMark() {}

    public static void paint(Canvas c, double xPt, double yPt) {
        double half = (SIZE_PT - RIM_PT) / 2;
        double x0 = xPt - half;
        double y0 = yPt - half;
        double x1 = xPt + half;
        double y1 = yPt + half;
        // a white rim keeps it apart from a heavy line of dark colour
        c.polygon(Color.WHITE, x0 - 2, y0 - 2, x1 + 2, y0 - 2, x1 + 2, y1 + 2, x0 - 2, y1 + 2);
        c.pen(Ink.BLACK, Ink.line(RIM_PT));
        c.outline(x0, y0, x1, y0, x1, y1, x0, y1);
        c.polygon(Ink.BLACK, x1, y0, x1, y1, x0, y1);
    }
}
