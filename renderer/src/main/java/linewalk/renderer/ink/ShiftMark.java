package linewalk.renderer.ink;

import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** Stands beside a valve that stands otherwise than in the step before: a heavy bar with a triangle. */
public final class ShiftMark {

    /** From side to side. */
    public static final double SIZE_PT = 10.8;

    private ShiftMark() {}

    /** From its top left corner. */
    public static void paint(Canvas c, double xPt, double yPt) {
        double unit = SIZE_PT / 1.5;
        c.polygon(Ink.BLACK, scaled(unit, xPt, yPt, 0.1, 0.1, 0.45, 0.1, 0.45, 1.3, 0.1, 1.3));
        c.polygon(Ink.BLACK, scaled(unit, xPt, yPt, 0.55, 0.1, 1.35, 0.7, 0.55, 1.3));
    }

    private static double[] scaled(double unit, double xPt, double yPt, double... xy) {
        for (int i = 0; i < xy.length; i++) {
            xy[i] = (i % 2 == 0 ? xPt : yPt) + unit * xy[i];
        }
        return xy;
    }
}
