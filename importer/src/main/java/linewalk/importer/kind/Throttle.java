package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
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

    /** Oblique, and longer than the throttle's waist. */
    private static boolean crosses(Arrow w, Point m, double size, Direction flow) {
        double slope = Math.abs(w.direction().along(flow));
        return slope > 0.2
                && slope < 0.97
                && w.direction().aside(w.tail(), m) < 0.5 * size
                && w.lengthPt() > 0.6 * size
                && w.middle().distancePt(m) < size;
    }
}
