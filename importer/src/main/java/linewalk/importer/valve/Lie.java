package linewalk.importer.valve;

import linewalk.drawing.Box;
import linewalk.drawing.Point;

/** How a row of squares lies on the page. Swapping the axes lays an upright row level; it is its own way back. */
enum Lie {
    LEVEL,
    UPRIGHT;

    Point local(Point p) {
        return this == LEVEL ? p : new Point(p.yPt(), p.xPt());
    }

    Box local(Box b) {
        return this == LEVEL ? b : new Box(b.y0Pt(), b.x0Pt(), b.y1Pt(), b.x1Pt());
    }
}
