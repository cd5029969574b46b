package linewalk.importer.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Point;

/**
 * Four oblique sides of one length that meet end to end are a diamond, whatever else ends at its corners: where the lines of
 * a filter or cooler do, its sides were not chained.
 */
final class Diamonds {

    private static final double ALIKE = 0.04;

    /** Cosine between neighbouring sides up to which a diamond is meant. */
    private static final double MOST_ALONG = 0.6;

    private static final double OBLIQUE = 0.25;

    private final Near<Stroke> near;
    private final double tolPt;

    private Diamonds(List<Stroke> sides, double tolPt) {
        this.near = new Near<>(sides, Stroke::box);
        this.tolPt = tolPt;
    }

    static List<Stroke> join(List<Stroke> strokes, double tolPt) {
        List<Stroke> sides = strokes.stream().filter(Diamonds::isSide).toList();
        Diamonds diamonds = new Diamonds(sides, tolPt);
        Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Stroke> found = new ArrayList<>();
        for (Stroke s : sides) {
            if (!used.contains(s)) {
                diamonds.around(s, used).ifPresent(found::add);
            }
        }
        if (found.isEmpty()) {
            return strokes;
        }
        List<Stroke> out = new ArrayList<>(strokes);
        out.removeIf(used::contains);
        out.addAll(found);
        return out;
    }

    private static boolean isSide(Stroke s) {
        if (s.closed() || s.points().size() != 2 || !s.dash().solid() || s.lengthPt() == 0) {
            return false;
        }
        Direction d = Direction.of(s.first(), s.last());
        return Math.min(Math.abs(d.dx()), Math.abs(d.dy())) > OBLIQUE;
    }

    private Optional<Stroke> around(Stroke start, Set<Stroke> used) {
        List<Stroke> way = new ArrayList<>(List.of(start));
        List<Point> corners = new ArrayList<>(List.of(start.first()));
        Point at = start.last();
        while (way.size() < 4) {
            Stroke before = way.get(way.size() - 1);
            Point from = corners.get(corners.size() - 1);
            Point end = at;
            Stroke next = near.within(at, tolPt / 2).stream()
                    .filter(s -> !way.contains(s) && !used.contains(s) && turns(before, from, end, s))
                    .filter(s -> way.size() < 2 || parallel(s, way.get(way.size() - 2)))
                    .findFirst()
                    .orElse(null);
            if (next == null) {
                return Optional.empty();
            }
            corners.add(at);
            way.add(next);
            at = next.first().distancePt(at) < next.last().distancePt(at) ? next.last() : next.first();
        }
        if (at.distancePt(start.first()) > tolPt / 2) {
            return Optional.empty();
        }
        used.addAll(way);
        return Optional.of(new Stroke(corners, true, false, start.widthPt(), Dash.SOLID, false));
    }

    /** Another side of one pen and length starts here. */
    private boolean turns(Stroke before, Point from, Point at, Stroke s) {
        boolean forth = s.first().distancePt(at) <= tolPt / 2;
        if (!forth && s.last().distancePt(at) > tolPt / 2) {
            return false;
        }
        Direction in = Direction.of(from, at);
        Direction out = forth ? Direction.of(s.first(), s.last()) : Direction.of(s.last(), s.first());
        return Math.abs(s.lengthPt() - before.lengthPt()) < ALIKE * before.lengthPt()
                && Math.abs(s.widthPt() - before.widthPt()) < 0.1 * before.widthPt()
                && Math.abs(in.along(out)) < MOST_ALONG;
    }

    private static boolean parallel(Stroke a, Stroke b) {
        return Math.abs(Direction.of(a.first(), a.last()).along(Direction.of(b.first(), b.last()))) > 0.99;
    }
}
