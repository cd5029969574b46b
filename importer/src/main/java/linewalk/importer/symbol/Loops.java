package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Corners;
import linewalk.importer.page.Stroke;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Outlines drawn piece by piece: small closed loops of single strokes become closed strokes, so that figures and flags
 * look the same whichever program drew them.
 */
final class Loops {

    /** Larger loops are made by lines that meet again. */
    private static final double LARGEST = 0.07;

    private static final int SIDES = 8;
    private static final int POINTS = 40;

    private final double largestPt;
    private final Corners corners;

    Loops(double tolPt, double pageWidthPt) {
        this.corners = new Corners(0.6 * tolPt);
        this.largestPt = LARGEST * pageWidthPt;
    }

    /** The strokes with loops of pieces replaced by closed strokes. */
    List<Stroke> close(List<Stroke> strokes) {
        Polygonizer polygonizer = new Polygonizer();
        GeometryFactory factory = new GeometryFactory();
        Map<Coordinate, List<Stroke>> at = new HashMap<>();
        for (Stroke s : strokes) {
            if (piece(s)) {
                Coordinate[] line = s.points().stream().map(this::snapped).toArray(Coordinate[]::new);
                if (line.length > 2 || !line[0].equals2D(line[1])) {
                    polygonizer.add(factory.createLineString(line));
                    for (Coordinate c : line) {
                        at.computeIfAbsent(c, k -> new ArrayList<>()).add(s);
                    }
                }
            }
        }
        List<Stroke> closed = new ArrayList<>();
        Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Polygon p : (Collection<Polygon>) polygonizer.getPolygons()) {
            closeLoop(p, at, closed, used);
        }
        if (closed.isEmpty()) {
            return strokes;
        }
        List<Stroke> out = new ArrayList<>(strokes);
        out.removeIf(used::contains);
        out.addAll(closed);
        return out;
    }

    private boolean piece(Stroke s) {
        if (s.closed() || !s.dash().solid() || s.points().size() > POINTS) {
            return false;
        }
        Box b = s.box();
        return Math.max(b.widthPt(), b.heightPt()) < largestPt;
    }

    private Coordinate snapped(Point p) {
        Point c = corners.at(p);
        return new Coordinate(c.xPt(), c.yPt());
    }

    private void closeLoop(Polygon p, Map<Coordinate, List<Stroke>> at, List<Stroke> closed, Set<Stroke> used) {
        Coordinate[] ring = p.getExteriorRing().getCoordinates();
        Box box =
                Box.around(List.of(ring).stream().map(c -> new Point(c.x, c.y)).toList());
        if (Math.max(box.widthPt(), box.heightPt()) > largestPt) {
            return;
        }
        List<Point> points = new ArrayList<>();
        Set<Stroke> sides = Collections.newSetFromMap(new IdentityHashMap<>());
        for (int i = 0; i + 1 < ring.length; i++) {
            points.add(new Point(ring[i].x, ring[i].y));
            List<Stroke> side = new ArrayList<>(at.get(ring[i]));
            side.retainAll(at.get(ring[i + 1]));
            sides.addAll(side);
        }
        if (!sides.isEmpty() && sides.size() <= SIDES) {
            Stroke like = sides.iterator().next();
            boolean curved = sides.stream().anyMatch(Stroke::curved);
            used.addAll(sides);
            closed.add(new Stroke(points, true, curved, like.widthPt(), like.dash(), false));
        }
    }
}
