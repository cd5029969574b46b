package linewalk.drawing;

/** An upright rectangle on a page, in points; x0 &lt;= x1 and y0 &lt;= y1. */
public record Box(double x0Pt, double y0Pt, double x1Pt, double y1Pt) {

    public static Box around(Point p) {
        return new Box(p.xPt(), p.yPt(), p.xPt(), p.yPt());
    }

    public static Box around(Iterable<Point> points) {
        Box box = null;
        for (Point p : points) {
            box = box == null ? around(p) : box.union(around(p));
        }
        if (box == null) {
            throw new IllegalArgumentException("no points to draw a box around");
        }
        return box;
    }

    public double widthPt() {
        return x1Pt - x0Pt;
    }

    public double heightPt() {
        return y1Pt - y0Pt;
    }

    public Point center() {
        return new Point((x0Pt + x1Pt) / 2, (y0Pt + y1Pt) / 2);
    }

    public Box union(Box o) {
        return new Box(Math.min(x0Pt, o.x0Pt), Math.min(y0Pt, o.y0Pt), Math.max(x1Pt, o.x1Pt), Math.max(y1Pt, o.y1Pt));
    }

    public Box grow(double byPt) {
        return new Box(x0Pt - byPt, y0Pt - byPt, x1Pt + byPt, y1Pt + byPt);
    }

    public boolean contains(Point p) {
        return p.xPt() >= x0Pt && p.xPt() <= x1Pt && p.yPt() >= y0Pt && p.yPt() <= y1Pt;
    }

    public boolean contains(Box o) {
        return o.x0Pt >= x0Pt && o.x1Pt <= x1Pt && o.y0Pt >= y0Pt && o.y1Pt <= y1Pt;
    }

    public boolean intersects(Box o) {
        return o.x0Pt <= x1Pt && o.x1Pt >= x0Pt && o.y0Pt <= y1Pt && o.y1Pt >= y0Pt;
    }

    /** Zero inside. */
    public double distancePt(Point p) {
        double dx = Math.max(Math.max(x0Pt - p.xPt(), 0), p.xPt() - x1Pt);
        double dy = Math.max(Math.max(y0Pt - p.yPt(), 0), p.yPt() - y1Pt);
        return Math.hypot(dx, dy);
    }

    /** The gap between two boxes; zero where they touch or overlap. */
    public double distancePt(Box o) {
        double dx = Math.max(Math.max(x0Pt - o.x1Pt, 0), o.x0Pt - x1Pt);
        double dy = Math.max(Math.max(y0Pt - o.y1Pt, 0), o.y0Pt - y1Pt);
        return Math.hypot(dx, dy);
    }
}
