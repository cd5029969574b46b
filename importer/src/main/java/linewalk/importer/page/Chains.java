package linewalk.importer.page;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Point;

/** Straight pieces of one pen that continue one another, with nothing else ending there, are one polyline. */
final class Chains {

    private static final double SAME_PEN = 0.05;

    /** Cosines of the turn from one piece of a curve to the next: 2 to 50 degrees. */
    private static final double MOST_STEP = 0.9994;

    private static final double LEAST_STEP = 0.64;

    /** The same where other lines end at the corner: 25 degrees at most. */
    private static final double GENTLE_STEP = 0.906;

    /** How many times longer than the next a piece of a curve is at most. */
    private static final double ALIKE = 2;

    /** Lines between parts are longer than this, in tolerances. */
    private static final double CUT_TOL = 8;

    /** Corners of an outline that is not round. */
    private static final int ROUND = 6;

    /** How far from the straight line a point may lie that is no bend, in tolerances. */
    private static final double STRAIGHT_TOL = 0.02;

    private final Corners corners;
    private final Map<Point, List<Stroke>> ends = new HashMap<>();
    private final Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());

    private final double tolPt;
    private final Near<Fill> dots;
    private Near<Stroke> through;

    /** @param fills of which dots say that something begins and ends there: lines that join, or a hose */
    Chains(List<Fill> fills, double tolPt) {
        this.tolPt = tolPt;
        dots = new Near<>(fills.stream().filter(f -> f.isEndDot(tolPt)).toList(), Fill::box);
        corners = new Corners(0.5 * tolPt);
    }

    List<Stroke> join(List<Stroke> strokes) {
        for (Stroke s : strokes) {
            if (!s.closed()) {
                ends.computeIfAbsent(corners.at(s.first()), k -> new ArrayList<>())
                        .add(s);
                ends.computeIfAbsent(corners.at(s.last()), k -> new ArrayList<>())
                        .add(s);
            }
        }
        through = new Near<>(strokes, Stroke::box);
        List<Stroke> out = new ArrayList<>();
        for (Stroke s : strokes) {
            if (s.closed() || s.curved()) {
                out.add(s);
            } else if (used.add(s)) {
                out.add(chain(s));
            }
        }
        return out;
    }

    private Stroke chain(Stroke start) {
        Deque<Point> points = new ArrayDeque<>(start.points());
        Point first = corners.at(start.first());
        Point last = extend(start, corners.at(start.last()), points, true);
        if (!first.equals(last)) {
            first = extend(start, first, points, false);
        }
        boolean ring = first.equals(last) && points.size() > 3;
        if (points.size() == start.points().size() && !ring) {
            return start;
        }
        List<Point> all = bends(List.copyOf(points));
        if (ring) {
            all.remove(all.size() - 1);
            // the first piece may lie in the middle of a side
            if (all.size() > 3 && isStraight(all.get(all.size() - 1), all.get(0), all.get(1))) {
                all.remove(0);
            }
        }
        return new Stroke(all, ring, false, start.widthPt(), start.dash(), false);
    }

    /** Without the points at which the pieces of one straight line met. */
    private List<Point> bends(List<Point> points) {
        List<Point> bends = new ArrayList<>(List.of(points.get(0)));
        for (int i = 1; i < points.size() - 1; i++) {
            if (!isStraight(bends.get(bends.size() - 1), points.get(i), points.get(i + 1))) {
                bends.add(points.get(i));
            }
        }
        bends.add(points.get(points.size() - 1));
        return bends;
    }

    private boolean isStraight(Point before, Point at, Point after) {
        return new Segment(before, after).distancePt(at) <= STRAIGHT_TOL * tolPt;
    }

    /** Adds what continues at one end; returns the corner where it stops. */
    private Point extend(Stroke start, Point from, Deque<Point> points, boolean atEnd) {
        Point at = from;
        Stroke current = start;
        for (Stroke next = next(current, at); next != null; next = next(current, at)) {
            used.add(next);
            boolean forth = corners.at(next.first()).equals(at);
            List<Point> more = new ArrayList<>(next.points());
            if (!forth) {
                Collections.reverse(more);
            }
            more.subList(1, more.size()).forEach(atEnd ? points::addLast : points::addFirst);
            at = corners.at(more.get(more.size() - 1));
            current = next;
        }
        return at;
    }

    /** Another stroke runs through the corner: whether the two join it or cross it is not for here to say. */
    private boolean passed(Point at, Stroke a, Stroke b) {
        for (Stroke s : through.within(at, tolPt)) {
            boolean ball = s.closed() && s.points().size() > ROUND && isCutSmall(a, b);
            int n = s.points().size();
            for (int i = s.closed() ? 0 : 1; i < n && s != a && s != b && !ball; i++) {
                if (new Segment(s.points().get((i + n - 1) % n), s.points().get(i)).distancePt(at) < tolPt / 2) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Arms of a seat that were cut where the ball rests on them. */
    private boolean isCutSmall(Stroke a, Stroke b) {
        return Math.max(a.lengthPt(), b.lengthPt()) < CUT_TOL * tolPt;
    }

    private Stroke next(Stroke current, Point at) {
        List<Stroke> there = ends.getOrDefault(at, List.of());
        if (there.size() > 2) {
            return onCurve(current, at, there);
        } else if (there.size() < 2) {
            return null;
        }
        Stroke other = there.get(0) == current ? there.get(1) : there.get(0);
        boolean dot = dots.within(at, tolPt / 2).stream()
                .anyMatch(f -> f.box().center().distancePt(at) < tolPt);
        boolean ends = other == current || other.curved() || used.contains(other) || !samePen(other, current) || dot;
        return ends || passed(at, current, other) && !curves(at, current, other) ? null : other;
    }

    private static boolean samePen(Stroke a, Stroke b) {
        return a.dash().like(b.dash()) && Math.abs(a.widthPt() - b.widthPt()) <= SAME_PEN * b.widthPt();
    }

    /** The one piece that goes on in the same curve where lines end on it, such as those at the ring of a pump; else null. */
    private Stroke onCurve(Stroke current, Point at, List<Stroke> there) {
        List<Stroke> others = there.stream()
                .filter(o -> o != current && !o.curved() && !used.contains(o) && samePen(o, current))
                .filter(o -> isGentle(at, current, o))
                .toList();
        return others.size() == 1 ? others.get(0) : null;
    }

    private boolean isGentle(Point at, Stroke a, Stroke b) {
        double one = lastPiece(a, at);
        double other = lastPiece(b, at);
        return curves(at, a, b)
                && inward(a, at).along(inward(b, at)) < -GENTLE_STEP
                && Math.max(one, other) < ALIKE * Math.min(one, other);
    }

    /** Two pieces of one curve: no lines meet so. */
    private boolean curves(Point at, Stroke a, Stroke b) {
        double along = inward(a, at).along(inward(b, at));
        return along < -LEAST_STEP && along > -MOST_STEP;
    }

    private double lastPiece(Stroke s, Point at) {
        List<Point> p = s.points();
        return corners.at(s.first()).equals(at)
                ? p.get(0).distancePt(p.get(1))
                : p.get(p.size() - 1).distancePt(p.get(p.size() - 2));
    }

    /** From the corner into the stroke. */
    private Direction inward(Stroke s, Point at) {
        List<Point> p = s.points();
        boolean first = corners.at(s.first()).equals(at);
        return first ? Direction.of(p.get(0), p.get(1)) : Direction.of(p.get(p.size() - 1), p.get(p.size() - 2));
    }
}
