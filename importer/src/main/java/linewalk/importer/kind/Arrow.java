package linewalk.importer.kind;

import linewalk.drawing.Point;
import linewalk.importer.page.Direction;

/**
 * A straight shaft with a head.
 *
 * @param headPt how large the head is
 */
record Arrow(Point tail, Point tip, double headPt) {

    Direction direction() {
        return Direction.of(tail, tip);
    }

    double lengthPt() {
        return tail.distancePt(tip);
    }

    Point middle() {
        return new Point((tail.xPt() + tip.xPt()) / 2, (tail.yPt() + tip.yPt()) / 2);
    }
}
