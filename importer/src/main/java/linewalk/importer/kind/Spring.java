package linewalk.importer.kind;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Stroke;
import linewalk.importer.symbol.Motif;

/** A zigzag and the line along which it pushes. */
record Spring(Point from, Point to, Box box) {

    static Spring of(Stroke s) {
        List<Point> ends = Motif.axisEnds(s);
        return new Spring(ends.get(0), ends.get(1), s.box());
    }

    Direction axis() {
        return Direction.of(from, to);
    }

    Point middle() {
        return new Point((from.xPt() + to.xPt()) / 2, (from.yPt() + to.yPt()) / 2);
    }
}
