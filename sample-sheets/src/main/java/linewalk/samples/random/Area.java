package linewalk.samples.random;

import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.samples.symbol.Spot;

/** An upright rectangle in drawing units; it may be as thin as a line or as small as a point. */
record Area(double x0, double y0, double x1, double y1) {
    static Area of(Spot... spots) {
        return of(List.of(spots));
    }

    static Area of(List<Spot> spots) {
        double x0 = spots.stream().mapToDouble(Spot::x).min().orElseThrow();
        double y0 = spots.stream().mapToDouble(Spot::y).min().orElseThrow();
        double x1 = spots.stream().mapToDouble(Spot::x).max().orElseThrow();
        double y1 = spots.stream().mapToDouble(Spot::y).max().orElseThrow();
        return new Area(x0, y0, x1, y1);
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
        return Math.hypot(dx, dy);
    }

    double distance(Spot spot) {
        return distance(of(spot));
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
