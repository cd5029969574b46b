package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * Throttles and orifices have no closed outline: two arcs or chevrons that bulge towards each other with the line
 * between.
 */
final class Throttles {

    private record Wall(Stroke stroke, Arc arc) {}

    private Throttles() {}

    /** A closed outline around each pair of walls. */
    static List<Outline> find(List<Stroke> strokes, double tolPt) {
        List<Wall> walls = new ArrayList<>();
        for (Stroke s : strokes) {
            Arc.of(s).ifPresent(a -> walls.add(new Wall(s, a)));
        }
        Near<Wall> near = new Near<>(walls, w -> w.stroke().box());
        Near<Segment> straight = new Near<>(Segment.straightOf(strokes), Segment::box);
        List<Outline> found = new ArrayList<>();
        for (Wall a : walls) {
            for (Wall b : near.touching(a.stroke().box().grow(1.6 * a.arc().chordPt()))) {
                if (a != b && before(a.stroke(), b.stroke()) && facing(a, b, straight, tolPt)) {
                    found.add(
                            Outline.of(around(a.stroke().box().union(b.stroke().box()), a.stroke())));
                }
            }
        }
        return found;
    }

    private static boolean before(Stroke a, Stroke b) {
        Box p = a.box();
        Box q = b.box();
        return p.x0Pt() + p.y0Pt() < q.x0Pt() + q.y0Pt();
    }

    /** What was drawn as curves is plain; walls of straight pieces need the line that they narrow. */
    private static boolean facing(Wall a, Wall b, Near<Segment> straight, double tolPt) {
        if (!a.arc().faces(b.arc()) || !b.arc().faces(a.arc())) {
            return false;
        }
        boolean curved = a.stroke().curved() && b.stroke().curved();
        Point p = a.arc().bulge();
        Point q = b.arc().bulge();
        Point waist = new Point((p.xPt() + q.xPt()) / 2, (p.yPt() + q.yPt()) / 2);
        Direction flow = Direction.of(a.arc().from(), a.arc().to());
        return curved
                || straight.within(waist, tolPt).stream()
                        .anyMatch(s -> s.distancePt(waist) <= tolPt
                                && s.lengthPt() > a.arc().chordPt()
                                && Math.abs(Direction.of(s.a(), s.b()).along(flow)) > 0.97);
    }

    static Stroke around(Box b, Stroke like) {
        List<Point> corners = List.of(
                new Point(b.x0Pt(), b.y0Pt()),
                new Point(b.x1Pt(), b.y0Pt()),
                new Point(b.x1Pt(), b.y1Pt()),
                new Point(b.x0Pt(), b.y1Pt()));
        return new Stroke(corners, true, false, like.widthPt(), Dash.SOLID, false);
    }
}
