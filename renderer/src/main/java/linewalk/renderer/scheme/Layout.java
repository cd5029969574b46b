package linewalk.renderer.scheme;

import java.awt.geom.Point2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A scheme with places.
 *
 * @param places top left corners of the fields, by node
 * @param dots where lines of a net meet
 */
public record Layout(
        double widthPt, double heightPt, Map<Node, Point2D> places, List<Course> courses, List<Point2D> dots) {

    /**
     * A net's way from one meeting to another, or to a point where it divides.
     *
     * @param from null where it starts at a division
     * @param to null where it ends at a division
     */
    public record Course(Net net, Net.Meeting from, Net.Meeting to, List<Point2D> points) {
        public Course {
            points = List.copyOf(points);
        }
    }

    Size size() {
        return new Size(widthPt, heightPt);
    }

    Layout moved(double dxPt, double dyPt) {
        Map<Node, Point2D> moved = new LinkedHashMap<>();
        places.forEach((node, at) -> moved.put(node, moved(at, dxPt, dyPt)));
        return new Layout(
                widthPt,
                heightPt,
                moved,
                courses.stream()
                        .map(c -> new Course(c.net, c.from, c.to, moved(c.points, dxPt, dyPt)))
                        .toList(),
                moved(dots, dxPt, dyPt));
    }

    private static List<Point2D> moved(List<Point2D> points, double dxPt, double dyPt) {
        return points.stream().map(p -> moved(p, dxPt, dyPt)).toList();
    }

    private static Point2D moved(Point2D p, double dxPt, double dyPt) {
        return new Point2D.Double(p.getX() + dxPt, p.getY() + dyPt);
    }
}
