package linewalk.importer.kind;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Stroke;

/** A zigzag and the line along which it pushes. */
record Spring(Point from, Point to, Box box) {

    static Spring of(Stroke s) {
        List<Point> p = s.points();
        return new Spring(p.get(0), p.get(p.size() - 1), s.box());
    }

    Direction axis() {
        return Direction.of(from, to);
    }

    Point middle() {
        return new Point((from.xPt() + to.xPt()) / 2, (from.yPt() + to.yPt()) / 2);
    }
}
