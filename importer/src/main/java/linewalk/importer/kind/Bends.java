package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Stroke;
import linewalk.importer.symbol.Motif;

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

    /** Springs among pieces that meet end to end, taken out of the pieces. */
    List<Stroke> zigzags(List<Stroke> pieces) {
        List<Stroke> straight =
                new ArrayList<>(pieces.stream().filter(s -> !s.curved()).toList());
        List<Stroke> springs = new ArrayList<>();
        while (!straight.isEmpty()) {
            List<Stroke> used = new ArrayList<>();
            List<Point> way = new ArrayList<>(straight.get(0).points());
            used.add(straight.remove(0));
            while (extend(way, straight, used) || reversed(way) && extend(way, straight, used)) {
                // grows at one end, then at the other
            }
            Stroke whole = new Stroke(
                    way, false, false, used.get(0).widthPt(), used.get(0).dash(), false);
            if (used.size() > 1 && Motif.zigzag(whole)) {
                springs.add(whole);
                pieces.removeAll(used);
            }
        }
        return springs;
    }

    private static boolean reversed(List<Point> way) {
        Collections.reverse(way);
        return true;
    }

    /** By the one piece that starts where the way ends and turns sharply. */
    private boolean extend(List<Point> way, List<Stroke> straight, List<Stroke> used) {
        Point end = way.get(way.size() - 1);
        Direction in = Direction.of(way.get(way.size() - 2), end);
        List<List<Point>> next = new ArrayList<>();
        Stroke with = null;
        for (Stroke s : straight) {
            for (List<Point> p : bothWays(s)) {
                double along = in.along(Direction.of(p.get(0), p.get(1)));
                if (p.get(0).distancePt(end) <= withinPt && along < 0.85 && along > -0.98) {
                    next.add(p);
                    with = s;
                }
            }
        }
        if (next.size() != 1) {
            return false;
        }
        way.addAll(next.get(0).subList(1, next.get(0).size()));
        used.add(with);
        straight.remove(with);
        return true;
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
