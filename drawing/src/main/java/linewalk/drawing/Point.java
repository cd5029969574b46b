package linewalk.drawing;

/** A place on a page as displayed, in points. */
public record Point(double xPt, double yPt) {

    public double distancePt(Point other) {
        return Math.hypot(xPt - other.xPt, yPt - other.yPt);
    }

    public Point plus(double dxPt, double dyPt) {
        return new Point(xPt + dxPt, yPt + dyPt);
    }
}
