package linewalk.importer.stroke;

import linewalk.drawing.Point;

/**
 * The page seen along a baseline.
 *
 * @param deg clockwise from "to the right"; 270 reads upwards
 */
record Turn(double deg, double cos, double sin) {

    static Turn of(double deg) {
        return new Turn(deg, round(Math.cos(Math.toRadians(deg))), round(Math.sin(Math.toRadians(deg))));
    }

    private static double round(double x) {
        return Math.abs(x - Math.rint(x)) < 1e-12 ? Math.rint(x) : x;
    }

    double along(Point p) {
        return p.xPt() * cos + p.yPt() * sin;
    }

    /** Downwards from the page's origin. */
    double down(Point p) {
        return -p.xPt() * sin + p.yPt() * cos;
    }

    Point back(double along, double down) {
        return new Point(along * cos - down * sin, along * sin + down * cos);
    }
}
