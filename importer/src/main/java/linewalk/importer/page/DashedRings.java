package linewalk.importer.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/** Short pieces of one pen around a circle, with even gaps, are one dashed circle, such as the ring of a detail. */
final class DashedRings {

    private static final int PIECES = 8;
    private static final double LONGEST_TOL = 30;
    private static final double TURN_DEG = 50;
    private static final double ROUND = 0.06;

    private final List<Stroke> pieces;
    private final Near<Stroke> near;
    private final Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());

    DashedRings(List<Stroke> strokes, double tolPt) {
        pieces = strokes.stream()
                .filter(s -> !s.closed() && s.dash().solid() && s.points().size() <= 4)
                .filter(s -> s.lengthPt() < LONGEST_TOL * tolPt && s.lengthPt() > tolPt)
                .toList();
        near = new Near<>(pieces, Stroke::box);
    }

    static List<Stroke> join(List<Stroke> strokes, double tolPt) {
        DashedRings rings = new DashedRings(strokes, tolPt);
        List<Stroke> found = new ArrayList<>();
        for (Stroke s : rings.pieces) {
            rings.ring(s).ifPresent(found::add);
        }
        if (found.isEmpty()) {
            return strokes;
        }
        List<Stroke> out = new ArrayList<>(strokes);
        out.removeIf(rings.used::contains);
        out.addAll(found);
        return out;
    }

    private Optional<Stroke> ring(Stroke start) {
        if (used.contains(start)) {
            return Optional.empty();
        }
        List<Stroke> way = new ArrayList<>(List.of(start));
        List<Point> points = new ArrayList<>(List.of(start.first(), start.last()));
        Point from = start.first();
        Point end = start.last();
        for (Stroke next = next(start, from, end, way); next != null; next = next(next, from, end, way)) {
            boolean forth = next.first().distancePt(end) <= next.last().distancePt(end);
            from = forth ? next.first() : next.last();
            end = forth ? next.last() : next.first();
            way.add(next);
            points.add(from);
            points.add(end);
        }
        double gap = end.distancePt(start.first());
        if (way.size() < PIECES || gap > 1.2 * start.lengthPt() || !round(points)) {
            return Optional.empty();
        }
        used.addAll(way);
        double onPt = way.stream().mapToDouble(Stroke::lengthPt).max().orElseThrow();
        return Optional.of(new Stroke(points, true, true, start.widthPt(), new Dash(onPt, false), false));
    }

    /** The nearest piece ahead that turns a little, over a gap no longer than a piece; none where something touches. */
    private Stroke next(Stroke s, Point from, Point end, List<Stroke> way) {
        double reach = 1.1 * s.lengthPt();
        Direction d = Direction.of(from, end);
        Stroke best = null;
        double least = reach;
        for (Stroke o : near.within(end, reach)) {
            boolean forth = o.first().distancePt(end) <= o.last().distancePt(end);
            Point a = forth ? o.first() : o.last();
            Point b = forth ? o.last() : o.first();
            double gap = a.distancePt(end);
            if (o != s && gap <= 0.05 * s.lengthPt()) {
                return null;
            }
            boolean fits = gap < least
                    && d.ahead(end, a) > 0
                    && d.along(Direction.of(a, b)) > Math.cos(Math.toRadians(TURN_DEG))
                    && Math.abs(o.widthPt() - s.widthPt()) < 0.1 * s.widthPt();
            if (fits && !way.contains(o) && !used.contains(o)) {
                best = o;
                least = gap;
            }
        }
        return best;
    }

    private static boolean round(List<Point> points) {
        Box b = Box.around(points);
        Point c = b.center();
        double r = (b.widthPt() + b.heightPt()) / 4;
        return Math.abs(b.widthPt() - b.heightPt()) < ROUND * 2 * r
                && points.stream().allMatch(p -> Math.abs(p.distancePt(c) - r) < ROUND * r);
    }
}
