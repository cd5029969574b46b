package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Corners;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Fields;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
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

    /** How much pens may differ that are one. */
    private static final double ONE_PEN = 1.1;

    private static final int SIDES = 8;
    private static final int POINTS = 40;

    private final double largestPt;
    private final Corners corners;
    private final double withinPt;

    Loops(double tolPt, double pageWidthPt) {
        this.withinPt = 0.6 * tolPt;
        this.corners = new Corners(withinPt);
        this.largestPt = LARGEST * pageWidthPt;
    }

    /** The strokes with loops of pieces replaced by closed strokes. */
    List<Stroke> close(List<Stroke> strokes) {
        Polygonizer polygonizer = new Polygonizer();
        GeometryFactory factory = new GeometryFactory();
        Map<Coordinate, List<Stroke>> at = new HashMap<>();
        Set<Set<Coordinate>> sides = new HashSet<>();
        List<Stroke> pieces = strokes.stream().filter(this::piece).toList();
        Near<Point> ends = new Near<>(overlaps(pieces), Box::around);
        for (Stroke s : pieces) {
            List<Coordinate> line = noded(s, ends);
            for (int i = 1; i < line.size(); i++) {
                Coordinate a = line.get(i - 1);
                Coordinate b = line.get(i);
                if (!a.equals2D(b)) {
                    at.computeIfAbsent(a, k -> new ArrayList<>()).add(s);
                    at.computeIfAbsent(b, k -> new ArrayList<>()).add(s);
                    if (sides.add(Set.of(a, b))) {
                        polygonizer.add(factory.createLineString(new Coordinate[] {a, b}));
                    }
                }
            }
        }
        List<Stroke> closed = new ArrayList<>();
        Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Polygon p : Fields.of(polygonizer)) {
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

    /** Circles may come in any number of pieces. */
    private static boolean round(List<Point> points) {
        Stroke ring = new Stroke(points, true, true, 0, Dash.SOLID, false);
        return Outline.of(ring).circle();
    }

    private boolean piece(Stroke s) {
        if (s.closed() || !s.dash().solid() || s.points().size() > POINTS) {
            return false;
        }
        Box b = s.box();
        return Math.max(b.widthPt(), b.heightPt()) < largestPt;
    }

    /** Corners in which a side ends that lies on another, longer one. */
    private List<Point> overlaps(List<Stroke> pieces) {
        List<Segment> sides = new ArrayList<>();
        for (Stroke s : pieces) {
            for (int i = 1; i < s.points().size() && !s.curved(); i++) {
                sides.add(new Segment(
                        corners.at(s.points().get(i - 1)), corners.at(s.points().get(i))));
            }
        }
        Near<Segment> near = new Near<>(sides, Segment::box);
        Set<Point> found = new LinkedHashSet<>();
        for (Segment s : sides) {
            for (Segment o : near.touching(s.box())) {
                boolean along = Math.abs(Direction.of(s.a(), s.b()).along(Direction.of(o.a(), o.b()))) > 0.999;
                if (s != o && along && (o.distancePt(s.a()) < withinPt && o.distancePt(s.b()) < withinPt)) {
                    found.add(s.a());
                    found.add(s.b());
                }
            }
        }
        return List.copyOf(found);
    }

    /** The stroke's corners, and the ends of others that lie along it: sides that overlap share their pieces. */
    private List<Coordinate> noded(Stroke s, Near<Point> ends) {
        List<Coordinate> line = new ArrayList<>();
        line.add(snapped(s.first()));
        for (int i = 1; i < s.points().size(); i++) {
            Segment side = new Segment(
                    corners.at(s.points().get(i - 1)), corners.at(s.points().get(i)));
            if (!s.curved()) {
                ends.touching(side.box().grow(withinPt)).stream()
                        .filter(p -> side.distancePt(p) < withinPt)
                        .filter(p -> side.position(p) > 0 && side.position(p) < 1)
                        .sorted(Comparator.comparingDouble(side::position))
                        .forEach(p -> line.add(snapped(p)));
            }
            line.add(snapped(s.points().get(i)));
        }
        return line;
    }

    private Coordinate snapped(Point p) {
        Point c = corners.at(p);
        return new Coordinate(c.xPt(), c.yPt());
    }

    /**
     * The strokes of a loop that is drawn with one pen: a line that leads around a part and back to it has another than the
     * part. Where figures of two pens lie on one another, each has strokes of its own there.
     *
     * @param sides the strokes along each side
     * @return empty where there is no such pen
     */
    private static List<Stroke> inOnePen(List<List<Stroke>> sides) {
        double[] pens = sides.stream()
                .flatMap(List::stream)
                .mapToDouble(Stroke::widthPt)
                .sorted()
                .distinct()
                .toArray();
        for (double pen : pens) {
            List<Stroke> found = new ArrayList<>();
            Set<Stroke> known = Collections.newSetFromMap(new IdentityHashMap<>());
            boolean all = true;
            for (List<Stroke> side : sides) {
                List<Stroke> own = side.stream()
                        .filter(s -> s.widthPt() >= pen && s.widthPt() <= ONE_PEN * pen)
                        .toList();
                all &= !own.isEmpty();
                own.stream().filter(known::add).forEach(found::add);
            }
            if (all) {
                return found;
            }
        }
        return List.of();
    }

    private void closeLoop(Polygon p, Map<Coordinate, List<Stroke>> at, List<Stroke> closed, Set<Stroke> used) {
        Coordinate[] ring = p.getExteriorRing().getCoordinates();
        Box box =
                Box.around(List.of(ring).stream().map(c -> new Point(c.x, c.y)).toList());
        if (Math.max(box.widthPt(), box.heightPt()) > largestPt) {
            return;
        }
        List<Point> points = new ArrayList<>();
        List<List<Stroke>> along = new ArrayList<>();
        for (int i = 0; i + 1 < ring.length; i++) {
            points.add(new Point(ring[i].x, ring[i].y));
            List<Stroke> side = new ArrayList<>(at.get(ring[i]));
            side.retainAll(at.get(ring[i + 1]));
            along.add(side);
        }
        List<Stroke> sides = inOnePen(along);
        if (!sides.isEmpty() && (sides.size() <= SIDES || round(points))) {
            Stroke like = sides.get(0);
            boolean curved = sides.stream().anyMatch(Stroke::curved);
            used.addAll(sides);
            closed.add(new Stroke(points, true, curved, like.widthPt(), like.dash(), false));
        }
    }
}
