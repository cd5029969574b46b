package linewalk.renderer.iso;

import linewalk.renderer.sheet.Canvas;

/** A part's symbol, ready to be drawn in a field of its own: nothing is drawn outside, and no line runs through it. */
public interface Symbol {

    /** The grid: ISO 1219-1 draws all symbols on multiples of a module. */
    double MODULE_PT = 7.2;

    /** A question mark stands in it for what was not made out. */
    boolean asks();

    double widthPt();

    double heightPt();

    /** Where the line of a port meets the field; lines end there, the symbol draws the rest. */
    PortPlace place(String portId);

    /** What a port is there for. */
    Duty duty(String portId);

    /** Draws into a field whose top left corner is given; leaves pen and colour as they come. */
    void paint(Canvas canvas, double xPt, double yPt);
}
