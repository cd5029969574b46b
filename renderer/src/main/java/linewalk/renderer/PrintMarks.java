package linewalk.renderer;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.RoundRectangle2D;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** Small marks that mean the same on every print. */
final class PrintMarks {

    static final double BALLOON_PT = 19;
    static final double DOUBT_WIDTH_PT = 36;
    static final double DOUBT_HEIGHT_PT = 21;

    private PrintMarks() {}

    /** An item number in a ring, centred on a point; long numbers get a wider ring. */
    static void balloon(Canvas c, String number, double xPt, double yPt) {
        double r = balloonWidthPt(number) / 2;
        Shape ring =
                new RoundRectangle2D.Double(xPt - r, yPt - BALLOON_PT / 2, 2 * r, BALLOON_PT, BALLOON_PT, BALLOON_PT);
        c.fill(Color.WHITE, ring);
        c.pen(Ink.BLACK, Ink.line(1.2));
        c.draw(ring);
        c.textAround(number, xPt, yPt, Lettering.TEXT_PT);
    }

    static double balloonWidthPt(String number) {
        return Math.max(BALLOON_PT, Lettering.widthPt(number, Lettering.TEXT_PT) + 7);
    }

    /** A hexagon, which no symbol has, with a doubt's number, centred on a point. */
    static void doubt(Canvas c, String mark, double xPt, double yPt) {
        double w = DOUBT_WIDTH_PT / 2;
        double h = DOUBT_HEIGHT_PT / 2;
        double flat = w - h / 2;
        double[] six = {
            xPt - w,
            yPt,
            xPt - flat,
            yPt - h,
            xPt + flat,
            yPt - h,
            xPt + w,
            yPt,
            xPt + flat,
            yPt + h,
            xPt - flat,
            yPt + h
        };
        c.polygon(Color.WHITE, six);
        c.pen(Ink.DOUBT, Ink.line(1.8));
        c.outline(six);
        c.pen(Ink.BLACK, Ink.line(1));
        c.textAround(mark, xPt, yPt, Lettering.TEXT_PT);
    }
}
