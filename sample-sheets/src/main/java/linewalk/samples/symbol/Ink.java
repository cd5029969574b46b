package linewalk.samples.symbol;

/** Draws in units; coordinates come as x, y, x, y, ... */
public interface Ink {
    void line(Pen pen, double... xy);

    void closed(Pen pen, double... xy);

    void circle(Pen pen, double x, double y, double radius);

    void fill(double... xy);

    void dot(double x, double y, double radius);

    void text(Lettering lettering, double x, double y, String text);

    /** An arrowhead by its tip and its two other corners, filled or as strokes as the style wants it. */
    void head(double... xy);

    /** An arrowhead with its tip at x, y that points along (dx, dy). */
    default void arrowHead(double x, double y, double dx, double dy, double length) {
        double norm = Math.hypot(dx, dy);
        double ux = dx / norm;
        double uy = dy / norm;
        double half = length * 0.32;
        head(
                x,
                y,
                x - ux * length - uy * half,
                y - uy * length + ux * half,
                x - ux * length + uy * half,
                y - uy * length - ux * half);
    }

    default void arrow(Pen pen, double x0, double y0, double x1, double y1) {
        line(pen, x0, y0, x1, y1);
        arrowHead(x1, y1, x1 - x0, y1 - y0, 0.28);
    }
}
