package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/** The two halves of a coupling, drawn as brackets that open towards each other: together they are a closed figure. */
final class Brackets {

    /** Two halves differ in width by less than this, as a share. */
    private static final double ALIKE = 0.1;

    private record Half(Stroke stroke, Point middle, Direction opens, double widthPt) {}

    private Brackets() {}

    /** A closed outline around each pair. */
    static List<Outline> find(List<Stroke> strokes, double tolPt) {
        List<Half> halves =
                strokes.stream().filter(Brackets::bracket).map(Brackets::half).toList();
        Near<Half> near = new Near<>(halves, h -> Box.around(h.middle()));
        List<Outline> found = new ArrayList<>();
        for (int i = 0; i < halves.size(); i++) {
            Half a = halves.get(i);
            for (Half b : near.within(a.middle(), 2 * a.widthPt())) {
                if (halves.indexOf(b) > i && pair(a, b, tolPt)) {
                    found.add(Outline.of(
                            Throttles.around(a.stroke().box().union(b.stroke().box()), a.stroke())));
                }
            }
        }
        return found;
    }

    /** Three sides square to each other, the outer ones short and of one length. */
    private static boolean bracket(Stroke s) {
        if (s.closed() || s.curved() || !s.dash().solid() || s.points().size() != 4) {
            return false;
        }
        Direction in = Direction.of(s.points().get(0), s.points().get(1));
        Direction across = Direction.of(s.points().get(1), s.points().get(2));
        Direction out = Direction.of(s.points().get(2), s.points().get(3));
        double one = s.points().get(0).distancePt(s.points().get(1));
        double other = s.points().get(2).distancePt(s.points().get(3));
        double width = s.points().get(1).distancePt(s.points().get(2));
        return Math.abs(in.along(across)) < 0.05
                && in.along(out) < -0.95
                && Math.abs(one - other) < ALIKE * Math.max(one, other)
                && one < width;
    }

    private static Half half(Stroke s) {
        Point a = s.points().get(1);
        Point b = s.points().get(2);
        Point middle = new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
        return new Half(s, middle, Direction.of(a, s.points().get(0)), a.distancePt(b));
    }

    private static boolean pair(Half a, Half b, double tolPt) {
        boolean facing = a.opens().along(b.opens()) < -0.95
                && a.opens().ahead(a.middle(), b.middle()) > 0
                && a.opens().aside(a.middle(), b.middle()) < tolPt;
        boolean near = a.middle().distancePt(b.middle()) < 1.5 * a.widthPt();
        return facing && near && Math.abs(a.widthPt() - b.widthPt()) < ALIKE * a.widthPt();
    }
}
