package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/** Throttles and orifices have no closed outline: two arcs that curve towards each other with the line between. */
final class Throttles {

    private Throttles() {}

    /** A closed outline around each pair of arcs. */
    static List<Outline> find(List<Stroke> strokes) {
        List<Stroke> arcs = strokes.stream()
                .filter(s -> s.curved() && !s.closed() && s.dash().solid())
                .toList();
        Near<Stroke> near = new Near<>(arcs, Stroke::box);
        List<Outline> found = new ArrayList<>();
        for (Stroke a : arcs) {
            double chord = a.first().distancePt(a.last());
            for (Stroke b : near.touching(a.box().grow(chord))) {
                if (a != b && before(a, b) && facing(a, b, chord)) {
                    found.add(Outline.of(around(a.box().union(b.box()), a)));
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

    private static boolean facing(Stroke a, Stroke b, double chordPt) {
        double other = b.first().distancePt(b.last());
        Point ends = middle(a.first(), a.last());
        Point otherEnds = middle(b.first(), b.last());
        Point bulge = a.points().get(a.points().size() / 2);
        Point otherBulge = b.points().get(b.points().size() / 2);
        double apart = ends.distancePt(otherEnds);
        return Math.abs(chordPt - other) < 0.15 * chordPt
                && apart < 1.3 * chordPt
                && bulge.distancePt(otherBulge) < apart - 0.15 * chordPt
                && bulge.distancePt(ends) > 0.08 * chordPt;
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
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
