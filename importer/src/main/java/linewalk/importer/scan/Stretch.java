package linewalk.importer.scan;

/** A straight stretch of a pen, in registered pixels. */
record Stretch(double x0, double y0, double x1, double y1, double widthPx) {

    private static final double SAME_WAY = Math.cos(Math.toRadians(10));

    double length() {
        return Math.hypot(x1 - x0, y1 - y0);
    }

    Stretch turned() {
        return new Stretch(x1, y1, x0, y0, widthPx);
    }

    private Straight line() {
        double length = Math.max(1e-9, length());
        return new Straight(x0, y0, (x1 - x0) / length, (y1 - y0) / length);
    }

    /** Where the lines through both cross; null where they all but run along each other. */
    double[] crossing(Stretch o) {
        return line().crossing(o.line());
    }

    /** Of the place beside the line through it. */
    double aside(double x, double y) {
        return line().aside(x, y);
    }

    /** From its start. */
    double along(double x, double y) {
        return line().along(x, y);
    }

    /** A place so far from its start, and so far beside it. */
    double[] at(double along, double aside) {
        double dx = (x1 - x0) / length();
        double dy = (y1 - y0) / length();
        return new double[] {x0 + along * dx - aside * dy, y0 + along * dy + aside * dx};
    }

    /** Both ends of the other lie on it. */
    boolean covers(Stretch o) {
        return covers(o.x0, o.y0) && covers(o.x1, o.y1);
    }

    /** The other's end lies on it, and it goes on further the same way. */
    boolean leadsOn(Stretch o) {
        double along = ((x1 - x0) * (o.x1 - o.x0) + (y1 - y0) * (o.y1 - o.y0)) / (length() * o.length());
        return covers(o.x1, o.y1) && !o.covers(this) && Math.abs(along) > SAME_WAY;
    }

    /** Within its ink, and one width around. */
    boolean covers(double x, double y) {
        double t = along(x, y);
        return aside(x, y) < widthPx && t > -widthPx && t < length() + widthPx;
    }
}
