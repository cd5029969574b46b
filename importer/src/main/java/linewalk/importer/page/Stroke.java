package linewalk.importer.page;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/**
 * One drawn polyline; curves come flattened.
 *
 * @param closed the last point joins the first
 * @param curved drawn at least in part as curves
 * @param widthPt of the pen
 * @param dash how the pen is interrupted
 * @param filled its inside is painted too
 */
public record Stroke(List<Point> points, boolean closed, boolean curved, double widthPt, Dash dash, boolean filled) {

    public Stroke {
        points = List.copyOf(points);
    }

    public Point first() {
        return points.get(0);
    }

    public Point last() {
        return closed ? points.get(0) : points.get(points.size() - 1);
    }

    public Box box() {
        return Box.around(points);
    }

    public double lengthPt() {
        double sum = closed ? points.get(points.size() - 1).distancePt(points.get(0)) : 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i - 1).distancePt(points.get(i));
        }
        return sum;
    }
}
