package linewalk.renderer.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Stroke;

/**
 * The colours and strokes of a print. Every mark differs from the others in lightness or pattern too, so that it
 * survives a black-and-white copy and any kind of colour-blindness.
 */
public final class Ink {

    public static final Color BLACK = Color.BLACK;
    /** Labels of cells and secondary words; dark enough to copy. */
    public static final Color GREY = new Color(0x50, 0x50, 0x50);

    public static final Color PALE = new Color(0xE6, 0xE6, 0xE6);
    /** The path in the drawn look. */
    public static final Color PATH = new Color(0x00, 0x3F, 0x7D);
    /** The path laid over the original: light enough to read through. */
    public static final Color OVERLAY = new Color(0xF0, 0xA8, 0x00, 0x80);
    /** Doubt: dark red-violet, always with a question mark in a hexagon. */
    public static final Color DOUBT = new Color(0x9A, 0x00, 0x50);

    private Ink() {}

    public static Stroke line(double widthPt) {
        return new BasicStroke((float) widthPt, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }

    public static Stroke round(double widthPt) {
        return new BasicStroke((float) widthPt, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    public static Stroke dashed(double widthPt, float... dashPt) {
        return new BasicStroke((float) widthPt, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashPt, 0);
    }
}
