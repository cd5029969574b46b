package linewalk.samples.random;

import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.samples.symbol.Spot;

/** An upright rectangle in drawing units; it may be as thin as a line or as small as a point. */
record Area(double x0, double y0, double x1, double y1) {
    static Area of(Spot a) {
        return new Area(a.x(), a.y(), a.x(), a.y());
    }

    static Area of(Spot a, Spot b) {
        return new Area(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    static Area of(List<Spot> spots) {
        return spots.stream().map(Area::of).reduce(Area::join).orElseThrow();
    }

    static Area around(double x, double y, double halfWidth, double halfHeight) {
        return new Area(x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight);
    }

    Area grown(double by) {
        return new Area(x0 - by, y0 - by, x1 + by, y1 + by);
    }

    Area join(Area other) {
        return new Area(Math.min(x0, other.x0), Math.min(y0, other.y0), Math.max(x1, other.x1), Math.max(y1, other.y1));
    }

    /** Nought where they touch or overlap. */
    double distance(Area other) {
        double dx = Math.max(0, Math.max(x0 - other.x1, other.x0 - x1));
        double dy = Math.max(0, Math.max(y0 - other.y1, other.y0 - y1));
        return dx == 0 ? dy : dy == 0 ? dx : Math.hypot(dx, dy);
    }

    double distance(Spot spot) {
        double dx = Math.max(0, Math.max(x0 - spot.x(), spot.x() - x1));
        double dy = Math.max(0, Math.max(y0 - spot.y(), spot.y() - y1));
        return dx == 0 ? dy : dy == 0 ? dx : Math.hypot(dx, dy);
    }

    boolean isWithin(Area other) {
        return x0 >= other.x0 && y0 >= other.y0 && x1 <= other.x1 && y1 <= other.y1;
    }

    boolean isMetBy(Spot a, Spot b) {
        return isMetBy(a.x(), a.y(), b.x(), b.y());
    }

    /** A straight line from the first two to the last two. */
    boolean isMetBy(double... line) {
        return new Rectangle2D.Double(x0, y0, x1 - x0, y1 - y0).intersectsLine(line[0], line[1], line[2], line[3]);
    }

    double width() {
        return x1 - x0;
    }

    double height() {
        return y1 - y0;
    }

    Spot centre() {
        return new Spot((x0 + x1) / 2, (y0 + y1) / 2);
    }
}
