package linewalk.importer.page;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LineStringExtracter;

/**
 * Symbols painted white over lines that were drawn on beneath them: what nobody sees of a line is no line. White behind
 * lettering alone interrupts none.
 */
final class Masks {

    private static final GeometryFactory JTS = new GeometryFactory();

    /** Lines along its edge are not hidden. */
    private static final double EDGE_PT = 0.3;

    /** In sizes of the page: larger ones are its paper, or panels of it. */
    private static final double MOST = 0.5;

    /** @param after how many strokes had been drawn when it was painted */
    private record Mask(List<Point> outline, Box box, int after) {

        Geometry area() {
            List<Coordinate> ring = new ArrayList<>();
            outline.forEach(p -> ring.add(new Coordinate(p.xPt(), p.yPt())));
            ring.add(ring.get(0));
            return JTS.createPolygon(ring.toArray(Coordinate[]::new)).buffer(-EDGE_PT);
        }
    }

    private final List<Mask> all = new ArrayList<>();

    void add(List<Point> outline, int after) {
        all.add(new Mask(List.copyOf(outline), Box.around(outline), after));
    }

    /** The strokes of a page as they are seen, in drawing order. */
    List<Stroke> seen(List<Stroke> strokes, double widthPt, double heightPt) {
        if (all.isEmpty()) {
            return strokes;
        }
        List<Mask> masks = all.stream()
                .filter(m -> m.box.widthPt() < MOST * widthPt && m.box.heightPt() < MOST * heightPt)
                .filter(m -> holdsDrawing(m, strokes))
                .toList();
        Near<Mask> near = new Near<>(masks, Mask::box);
        List<Stroke> seen = new ArrayList<>();
        for (int i = 0; i < strokes.size(); i++) {
            Stroke s = strokes.get(i);
            int drawn = i;
            List<Mask> over = s.closed()
                    ? List.of()
                    : near.touching(s.box()).stream()
                            .filter(m -> m.after > drawn)
                            .toList();
            seen.addAll(over.isEmpty() ? List.of(s) : left(s, over));
        }
        return seen;
    }

    /** Something was drawn on it, or around it. */
    private static boolean holdsDrawing(Mask m, List<Stroke> strokes) {
        Box room = m.box.grow(EDGE_PT);
        return strokes.subList(m.after, strokes.size()).stream().anyMatch(s -> room.contains(s.box()));
    }

    private static List<Stroke> left(Stroke s, List<Mask> over) {
        Coordinate[] points =
                s.points().stream().map(p -> new Coordinate(p.xPt(), p.yPt())).toArray(Coordinate[]::new);
        Geometry whole = JTS.createLineString(points);
        Geometry rest = whole;
        for (Mask m : over) {
            rest = rest.difference(m.area());
        }
        if (rest.getLength() > whole.getLength() - EDGE_PT) {
            return List.of(s);
        }
        List<Stroke> left = new ArrayList<>();
        for (Object line : LineStringExtracter.getLines(rest)) {
            List<Point> p = List.of(((LineString) line).getCoordinates()).stream()
                    .map(c -> new Point(c.x, c.y))
                    .toList();
            left.add(new Stroke(p, false, s.curved(), s.widthPt(), s.dash(), s.filled()));
        }
        return left;
    }
}
