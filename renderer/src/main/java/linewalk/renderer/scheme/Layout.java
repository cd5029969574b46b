package linewalk.renderer.scheme;

import java.awt.geom.Point2D;
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
}
