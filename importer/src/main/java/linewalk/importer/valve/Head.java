package linewalk.importer.valve;

import linewalk.drawing.Point;
import linewalk.importer.page.Direction;

/** An arrowhead inside a square: where it points and where its shaft comes in. */
record Head(Point tip, Point base, Direction direction) {

    static Head of(Point tip, Point a, Point b) {
        Point base = new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
        return new Head(tip, base, Direction.of(base, tip));
    }

    double lengthPt() {
        return tip.distancePt(base);
    }
}
