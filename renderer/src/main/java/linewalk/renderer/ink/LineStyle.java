package linewalk.renderer.ink;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.function.BiPredicate;
import linewalk.renderer.sheet.Canvas;

/**
 * How a line is drawn.
 *
 * @param widthPt of its strokes, 0.8 to 4
 */
public record LineStyle(Color color, double widthPt, LinePattern pattern) {

    /** Draws a line. Marks and dashes keep clear of its corners. */
    public void paint(Canvas c, List<Point2D> course) {
        paint(c, course, (p, breadthPt) -> true);
    }

    /** @param free tells whether a mark of the line's pattern, of a breadth in points, has room at a point */
    public void paint(Canvas c, List<Point2D> course, BiPredicate<Point2D, Double> free) {
        if (course.size() > 1) {
            pattern.paint(c, this, new Course(course, p -> free.test(p, breadthPt())));
        }
    }

    /** A sample for the legend in a field 44 wide and 18 high whose upper left corner is given. */
    public void paintSample(Canvas c, double xPt, double yPt) {
        paint(c, List.of(new Point2D.Double(xPt, yPt + 10), new Point2D.Double(xPt + 44, yPt + 10)));
    }

    /** From side to side where none of the pattern's marks stands. */
    public double bareWidthPt() {
        return pattern == LinePattern.ZIGZAG ? breadthPt() : widthPt;
    }

    /** From side to side with all that the line carries: what crosses or stands beside it keeps clear of this. */
    public double breadthPt() {
        return Math.max(widthPt, pattern.breadthPt());
    }
}
