package linewalk.samples.style;

/** How lines come out of the drawing program. */
public enum LineWork {
    /** One stroke a line, dashes by the pen. */
    STROKES,
    /** As strokes; where two lines cross, one hops over the other. */
    HOPS,
    /** Everything exploded: each straight piece, dash, side of a rectangle and bit of a circle is a stroke of its own. */
    PIECES,
    /** Lines are thin filled rectangles, dashes too; some bends are cut off obliquely. Only symbols have strokes. */
    BARS
}
