package linewalk.importer.scan;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import linewalk.importer.page.Fields;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** Cuts a figure where a side goes on inside it from a corner that points inwards: a solenoid beside a valve's squares. */
final class RingCuts {

    /** How far off a side's line a place is hardly out of line, in widths of the pen. */
    private static final double CUT = 1.6;

    private final GeometryFactory factory = new GeometryFactory();
    private final List<Line> lines;

    RingCuts(Collection<Line> lines) {
        this.lines = List.copyOf(new LinkedHashSet<>(lines));
    }

    /** The ring cut by its own sides where they go on inside. */
    List<Polygon> cut(Polygon outer, double width) {
        List<double[]> corners = RingShape.corners(outer, width);
        Geometry net = outer.getExteriorRing();
        int n = corners.size();
        double turn = Orientation.isCCW(outer.getExteriorRing().getCoordinates()) ? 1 : -1;
        boolean any = false;
        for (int i = 0; i < n; i++) {
            double[] v = corners.get(i);
            double[] before = corners.get((i + n - 1) % n);
            double[] after = corners.get((i + 1) % n);
            double cross = (v[0] - before[0]) * (after[1] - v[1]) - (v[1] - before[1]) * (after[0] - v[0]);
            if (cross * turn < 0) {
                for (double[] from : new double[][] {before, after}) {
                    LineString inside = inside(from, v, outer);
                    if (inside != null && !isSliver(inside, outer, width)) {
                        net = net.union(inside);
                        any = true;
                    }
                }
            }
        }
        if (!any) {
            return List.of(outer);
        }
        Polygonizer parts = new Polygonizer();
        parts.add(net);
        return Fields.of(parts);
    }

    /** Along a side of the ring itself, which is hardly out of line: two boxes side by side. */
    private static boolean isSliver(LineString inside, Polygon outer, double width) {
        return outer.getExteriorRing().distance(inside.getCentroid()) < CUT * width + 1;
    }

    /** Where the side's line goes on past a corner, through the figure to its other side; null where it does not. */
    private LineString inside(double[] from, double[] v, Polygon outer) {
        double length = Math.hypot(v[0] - from[0], v[1] - from[1]);
        double dx = (v[0] - from[0]) / length;
        double dy = (v[1] - from[1]) / length;
        double reach = outer.getEnvelopeInternal().getWidth()
                + outer.getEnvelopeInternal().getHeight();
        Geometry ray = factory.createLineString(new Coordinate[] {
                    new Coordinate(v[0] + 0.01 * dx, v[1] + 0.01 * dy),
                    new Coordinate(v[0] + reach * dx, v[1] + reach * dy)
                })
                .intersection(outer);
        Geometry first = ray.getNumGeometries() == 0 ? null : ray.getGeometryN(0);
        if (!(first instanceof LineString s) || s.isEmpty()) {
            return null;
        }
        Coordinate end = s.getCoordinateN(s.getNumPoints() - 1);
        double along = Math.hypot(end.x - v[0], end.y - v[1]);
        double drawn = lines.stream()
                .filter(l -> l.straight != null && Math.abs(l.straight.dx() * dx + l.straight.dy() * dy) > 0.999)
                .filter(l -> l.straight.aside(v[0], v[1]) < 1.5 && l.spans(v[0], v[1]))
                .mapToDouble(l -> l.reach(v[0], v[1], dx, dy))
                .max()
                .orElse(0);
        return drawn < along - 2
                ? null
                : factory.createLineString(new Coordinate[] {
                    new Coordinate(v[0], v[1]), new Coordinate(end.x + 0.01 * dx, end.y + 0.01 * dy)
                });
    }
}
