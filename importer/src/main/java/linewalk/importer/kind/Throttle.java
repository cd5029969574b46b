package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Arc;

/**
 * Two walls that bulge towards each other with the line between.
 *
 * @param adjustable an arrow runs across
 */
record Throttle(Point place, double sizePt, Direction flow, boolean adjustable) {

    static List<Throttle> find(Picture p) {
        List<Throttle> found = new ArrayList<>();
        List<Arc> arcs = p.arcs();
        for (int i = 0; i < arcs.size(); i++) {
            for (int j = i + 1; j < arcs.size(); j++) {
                if (arcs.get(i).faces(arcs.get(j)) && arcs.get(j).faces(arcs.get(i))) {
                    found.add(of(arcs.get(i), arcs.get(j), p));
                }
            }
        }
        return found;
    }

    private static Throttle of(Arc a, Arc b, Picture p) {
        Point m = new Point(
                (a.middle().xPt() + b.middle().xPt()) / 2,
                (a.middle().yPt() + b.middle().yPt()) / 2);
        double size = Math.max(a.chordPt(), a.middle().distancePt(b.middle()));
        Direction flow = Direction.of(a.from(), a.to());
        boolean across = p.arrows().stream().anyMatch(w -> crosses(w, m, size, flow));
        return new Throttle(m, size, flow, across);
    }

    private static boolean crosses(Arrow w, Point m, double size, Direction flow) {
        return crosses(new Segment(w.tail(), w.tip()), m, size, flow);
    }

    /** Oblique, and longer than the throttle's waist. */
    private static boolean crosses(Segment s, Point m, double size, Direction flow) {
        Direction way = Direction.of(s.a(), s.b());
        double slope = Math.abs(way.along(flow));
        Point middle = new Point((s.a().xPt() + s.b().xPt()) / 2, (s.a().yPt() + s.b().yPt()) / 2);
        return slope > 0.2
                && slope < 0.97
                && way.aside(s.a(), m) < 0.5 * size
                && s.lengthPt() > 0.6 * size
                && middle.distancePt(m) < size;
    }

    /** The stroke lies as the arrow across does. */
    boolean crossedBy(Segment s) {
        return crosses(s, place, sizePt, flow);
    }
}
