package linewalk.importer.kind;

import linewalk.drawing.Point;
import linewalk.importer.page.Direction;

/**
 * A ball on its seat.
 *
 * @param seat the seat's tip, where oil comes in
 * @param ball its centre, where oil goes out
 * @param sizePt of the ball
 */
record Check(Point seat, Point ball, double sizePt) {

    Direction free() {
        return Direction.of(seat, ball);
    }
}
