package linewalk.importer.line;

import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Direction;

/**
 * Line work between two nodes.
 *
 * @param points from the place of {@code from} to the place of {@code to}
 * @param bridged not drawn: a gap left for a text or a crossing line
 */
public record Run(Node from, Node to, List<Point> points, double widthPt, Dash dash, boolean bridged) {

    public Run {
        points = List.copyOf(points);
    }

    public Node other(Node n) {
        return n == from ? to : from;
    }

    public double lengthPt() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i - 1).distancePt(points.get(i));
        }
        return sum;
    }

    /** The direction in which the run leaves the drawing at this node: out of its end. */
    public Direction outward(Node at) {
        int n = points.size();
        return at == to
                ? Direction.of(points.get(n - 2), points.get(n - 1))
                : Direction.of(points.get(1), points.get(0));
    }

    @Override
    public boolean equals(Object o) {
        return this == o;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
