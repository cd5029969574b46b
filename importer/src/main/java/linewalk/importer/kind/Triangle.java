package linewalk.importer.kind;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/** A filled or drawn triangle; an arrowhead, the sign of a pump, or half a cock. */
record Triangle(List<Point> corners) {

    Triangle {
        corners = List.copyOf(corners);
    }

    Point center() {
        return new Point(
                corners.stream().mapToDouble(Point::xPt).average().orElse(0),
                corners.stream().mapToDouble(Point::yPt).average().orElse(0));
    }

    Box box() {
        return Box.around(corners);
    }

    double sizePt() {
        return Math.max(box().widthPt(), box().heightPt());
    }

    /** The middle of the side that a corner looks at. */
    Point base(int corner) {
        Point a = corners.get((corner + 1) % 3);
        Point b = corners.get((corner + 2) % 3);
        return new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
    }

    /** The corner between the two sides that are most alike: the tip, unless all sides are alike. */
    int tip() {
        int tip = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            double a = corners.get(i).distancePt(corners.get((i + 1) % 3));
            double b = corners.get(i).distancePt(corners.get((i + 2) % 3));
            if (Math.abs(a - b) < least) {
                least = Math.abs(a - b);
                tip = i;
            }
        }
        return tip;
    }
}
