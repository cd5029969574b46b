package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Stroke;

/** Bends drawn piece by piece: pieces that go on smoothly from one another become one stroke. */
final class Bends {

    private static final double SMOOTH = Math.cos(Math.toRadians(50));

    private final double withinPt;

    Bends(double withinPt) {
        this.withinPt = withinPt;
    }

    List<Stroke> join(List<Stroke> pieces) {
        List<Stroke> open = new ArrayList<>(pieces);
        List<Stroke> done = new ArrayList<>();
        while (!open.isEmpty()) {
            Stroke s = open.remove(open.size() - 1);
            Stroke longer = grown(s, open);
            while (longer != s) {
                s = longer;
                longer = grown(s, open);
            }
            done.add(s);
        }
        return done;
    }

    private Stroke grown(Stroke s, List<Stroke> open) {
        for (int i = 0; i < open.size(); i++) {
            Stroke o = open.get(i);
            for (List<Point> a : bothWays(s)) {
                for (List<Point> b : bothWays(o)) {
                    if (goesOn(a, b)) {
                        open.remove(i);
                        List<Point> all = new ArrayList<>(a);
                        all.addAll(b.subList(1, b.size()));
                        return new Stroke(all, false, s.curved() || o.curved(), s.widthPt(), s.dash(), false);
                    }
                }
            }
        }
        return s;
    }

    private static List<List<Point>> bothWays(Stroke s) {
        List<Point> back = new ArrayList<>(s.points());
        Collections.reverse(back);
        return List.of(s.points(), back);
    }

    private boolean goesOn(List<Point> a, List<Point> b) {
        Point end = a.get(a.size() - 1);
        Direction in = Direction.of(a.get(a.size() - 2), end);
        Direction out = Direction.of(b.get(0), b.get(1));
        return end.distancePt(b.get(0)) <= withinPt && in.along(out) > SMOOTH;
    }
}
