package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/**
 * Arrowheads of a square: triangles, filled or not, and pairs of short strokes, each on a shaft that comes from its base.
 * Without a shaft between them two strokes are a seat or a mark.
 */
final class HeadFinder {

    private static final double LONGEST = 0.5;
    private static final double STRAIGHT = 0.97;

    private final List<Ink> ink;
    private final double longestPt;
    private final double tolPt;
    private final List<Head> heads = new ArrayList<>();
    private final Set<Ink> used = Collections.newSetFromMap(new IdentityHashMap<>());

    HeadFinder(List<Ink> ink, double sidePt, double tolPt) {
        this.ink = ink;
        this.longestPt = LONGEST * sidePt;
        this.tolPt = tolPt;
        ink.stream().filter(Ink::closed).forEach(this::triangle);
        List<Ink> barbs = ink.stream()
                .filter(k -> !k.closed() && k.points().size() == 2 && k.lengthPt() < longestPt)
                .toList();
        for (int i = 0; i < barbs.size(); i++) {
            for (int j = i + 1; j < barbs.size(); j++) {
                pair(barbs.get(i), barbs.get(j));
            }
        }
    }

    List<Head> heads() {
        return heads;
    }

    /** What the heads are drawn with. */
    Set<Ink> used() {
        return used;
    }

    private void triangle(Ink k) {
        List<Point> p = k.points();
        if (k.sizePt() > longestPt || p.size() < 3 || p.size() > 4 || k.round()) {
            return;
        }
        Head best = null;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get((i + 1) % p.size());
            Point b = p.get((i + p.size() - 1) % p.size());
            if (p.size() == 4 && !notched(p, i)) {
                continue;
            }
            Head h = Head.of(p.get(i), a, b);
            boolean even = alike(p.get(i), a, b) && a.distancePt(b) < 2.5 * h.lengthPt();
            if (even && shaft(h, h.base(), k, k) && (best == null || h.lengthPt() > best.lengthPt())) {
                best = h;
            }
        }
        if (best != null) {
            heads.add(best);
            used.add(k);
        }
    }

    /** An arrowhead with its base drawn in: the corner opposite the tip lies between base and tip. */
    private static boolean notched(List<Point> p, int tip) {
        Head h = Head.of(p.get(tip), p.get((tip + 1) % 4), p.get((tip + 3) % 4));
        Point notch = p.get((tip + 2) % 4);
        double ahead = h.direction().ahead(h.base(), notch);
        return ahead > 0.02 * h.lengthPt() && ahead < 0.8 * h.lengthPt();
    }

    private void pair(Ink a, Ink b) {
        for (Point tip : List.of(a.first(), a.last())) {
            Point barbA = tip == a.first() ? a.last() : a.first();
            boolean first = b.first().distancePt(tip) <= tolPt;
            if (!first && b.last().distancePt(tip) > tolPt) {
                continue;
            }
            Point barbB = first ? b.last() : b.first();
            Head h = Head.of(tip, barbA, barbB);
            double spread = barbA.distancePt(barbB) / 2;
            boolean shaped = alike(tip, barbA, barbB) && spread > 0.12 * h.lengthPt() && spread < 1.5 * h.lengthPt();
            if (shaped && shaft(h, h.tip(), a, b)) {
                heads.add(h);
                used.add(a);
                used.add(b);
            }
        }
    }

    private static boolean alike(Point tip, Point a, Point b) {
        double p = tip.distancePt(a);
        double q = tip.distancePt(b);
        return Math.abs(p - q) < 0.2 * Math.max(p, q);
    }

    /** A piece along the head's axis that comes from the base's side as far as {@code to}. */
    private boolean shaft(Head h, Point to, Ink one, Ink two) {
        for (Ink k : ink) {
            if (k == one || k == two || k.closed()) {
                continue;
            }
            for (Segment s : k.segments()) {
                boolean along = Math.abs(Direction.of(s.a(), s.b()).along(h.direction())) > STRAIGHT;
                double back = Math.min(
                        h.direction().ahead(h.tip(), s.a()), h.direction().ahead(h.tip(), s.b()));
                double reach =
                        Math.max(h.direction().ahead(to, s.a()), h.direction().ahead(to, s.b()));
                if (along
                        && back < -1.3 * h.lengthPt()
                        && reach > -tolPt
                        && h.direction().aside(h.tip(), s.a()) < 0.06 * s.lengthPt() + tolPt
                        && h.direction().aside(h.tip(), s.b()) < 0.06 * s.lengthPt() + tolPt) {
                    return true;
                }
            }
        }
        return false;
    }
}
