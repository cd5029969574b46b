package linewalk.samples.symbol;

/** Small shapes that several symbols share. */
final class Motif {
    private Motif() {}

    /** A compression spring between two points of one height. */
    static void spring(Ink ink, double x0, double x1, double y, double half) {
        int turns = 6;
        double[] xy = new double[2 * (turns + 1)];
        for (int i = 0; i <= turns; i++) {
            xy[2 * i] = x0 + (x1 - x0) * i / turns;
            xy[2 * i + 1] = y + (i % 2 == 0 ? half : -half);
        }
        ink.line(Pen.THIN, xy);
    }

    /** Ball on a seat, free upwards; the seat's tip is 0.3 below and the ball's top 0.2 above, times the size. */
    static void check(Ink ink, double x, double y, double size) {
        ink.line(Pen.OUTLINE, x - 0.35 * size, y - 0.05 * size, x, y + 0.3 * size, x + 0.35 * size, y - 0.05 * size);
        ink.circle(Pen.OUTLINE, x, y, 0.2 * size);
    }

    static void box(Ink ink, Pen pen, double x, double y, double halfWidth, double halfHeight) {
        ink.closed(
                pen,
                x - halfWidth,
                y - halfHeight,
                x + halfWidth,
                y - halfHeight,
                x + halfWidth,
                y + halfHeight,
                x - halfWidth,
                y + halfHeight);
    }

    /** An open curve, the side of a throttle: bulges towards {@code towards}. */
    static void bow(Ink ink, double x, double y, double half, double towards) {
        int parts = 8;
        double[] xy = new double[2 * (parts + 1)];
        for (int i = 0; i <= parts; i++) {
            double t = -1 + 2.0 * i / parts;
            xy[2 * i] = x + towards * (1 - t * t);
            xy[2 * i + 1] = y + half * t;
        }
        ink.line(Pen.OUTLINE, xy);
    }

    static void diamond(Ink ink, double half) {
        ink.closed(Pen.OUTLINE, 0, -half, half, 0, 0, half, -half, 0);
    }
}
