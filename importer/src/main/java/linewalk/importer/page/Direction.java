package linewalk.importer.page;

import linewalk.drawing.Point;

/** A unit vector on the page. */
public record Direction(double dx, double dy) {

    /** From one point to another; points of one place give "to the right". */
    public static Direction of(Point from, Point to) {
        double d = from.distancePt(to);
        return d == 0 ? new Direction(1, 0) : new Direction((to.xPt() - from.xPt()) / d, (to.yPt() - from.yPt()) / d);
    }

    public static Direction ofAngle(double clockwiseDeg) {
        double a = Math.toRadians(clockwiseDeg);
        return new Direction(Math.cos(a), Math.sin(a));
    }

    /** Cosine of the angle between. */
    public double along(Direction o) {
        return dx * o.dx + dy * o.dy;
    }

    /** How far p lies ahead of the start. */
    public double ahead(Point start, Point p) {
        return (p.xPt() - start.xPt()) * dx + (p.yPt() - start.yPt()) * dy;
    }

    /** How far p lies aside of the ray from the start, without sign. */
    public double aside(Point start, Point p) {
        return Math.abs((p.xPt() - start.xPt()) * -dy + (p.yPt() - start.yPt()) * dx);
    }
}
