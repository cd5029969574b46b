package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Segment;

/**
 * Which pieces inside a square are one passage: an end on another piece joins it, as does a dot; pieces that pass each
 * other do not, nor do four ends that meet as two straight lines.
 */
final class Joins {

    private static final double STRAIGHT = 0.96;

    /** One way out of a place, along a piece. */
    private record Leg(int ink, Direction way) {}

    /** A crossing drawn as four ends: it can be told from a join only by arrowheads. */
    record Crossing(int one, int two) {}

    private final List<Ink> ink;
    private final double tolPt;
    private final int[] parent;
    private final List<Crossing> crossings = new ArrayList<>();

    Joins(List<Ink> ink, List<Ink> dots, double tolPt) {
        this.ink = ink;
        this.tolPt = tolPt;
        parent = new int[ink.size()];
        for (int i = 0; i < parent.length; i++) {
            parent[i] = i;
        }
        for (int i = 0; i < ink.size(); i++) {
            if (!ink.get(i).closed()) {
                end(i, ink.get(i).first(), dots);
                end(i, ink.get(i).last(), dots);
            }
        }
        dots.forEach(this::dot);
    }

    List<Crossing> crossings() {
        return crossings;
    }

    int group(int i) {
        return parent[i] == i ? i : group(parent[i]);
    }

    /** Numbers of pieces by group. */
    Map<Integer, List<Integer>> groups() {
        Map<Integer, List<Integer>> out = new LinkedHashMap<>();
        for (int i = 0; i < parent.length; i++) {
            out.computeIfAbsent(group(i), k -> new ArrayList<>()).add(i);
        }
        return out;
    }

    void join(int i, int j) {
        parent[group(i)] = group(j);
    }

    private void dot(Ink dot) {
        Point c = dot.box().center();
        int first = -1;
        for (int i = 0; i < ink.size(); i++) {
            if (ink.get(i).distancePt(c) <= dot.sizePt() / 2 + tolPt / 2) {
                if (first >= 0) {
                    join(i, first);
                }
                first = i;
            }
        }
    }

    private void end(int i, Point at, List<Ink> dots) {
        List<Integer> there = new ArrayList<>();
        for (int j = 0; j < ink.size(); j++) {
            if (j != i && ink.get(j).distancePt(at) <= tolPt) {
                there.add(j);
            }
        }
        boolean dotted = dots.stream().anyMatch(d -> d.box().center().distancePt(at) <= d.sizePt() / 2 + tolPt);
        List<Leg> legs = dotted || there.isEmpty() ? List.of() : legs(at);
        if (isCrossing(legs)) {
            for (int k = 0; k < 4; k++) {
                join(legs.get(k).ink, legs.get(partner(legs, k)).ink);
            }
            crossings.add(new Crossing(legs.get(0).ink, legs.get(partner(legs, 0) == 1 ? 2 : 1).ink));
        } else {
            there.forEach(j -> join(i, j));
        }
    }

    private List<Leg> legs(Point at) {
        List<Leg> legs = new ArrayList<>();
        for (int j = 0; j < ink.size(); j++) {
            Ink k = ink.get(j);
            if (k.closed() || k.distancePt(at) > tolPt) {
                continue;
            }
            boolean first = k.first().distancePt(at) <= tolPt;
            boolean last = k.last().distancePt(at) <= tolPt;
            if (first) {
                legs.add(new Leg(j, k.inward(true)));
            }
            if (last) {
                legs.add(new Leg(j, k.inward(false)));
            }
            if (!first && !last) {
                through(j, at, legs);
            }
        }
        return legs;
    }

    private void through(int j, Point at, List<Leg> legs) {
        for (Segment s : ink.get(j).segments()) {
            if (s.distancePt(at) <= tolPt) {
                Direction d = Direction.of(s.a(), s.b());
                legs.add(new Leg(j, d));
                legs.add(new Leg(j, new Direction(-d.dx(), -d.dy())));
                return;
            }
        }
    }

    /** Two lines go straight on, each past the other. */
    private static boolean isCrossing(List<Leg> legs) {
        return legs.size() == 4
                && IntStream.range(0, 4).allMatch(k -> partner(legs, k) >= 0 && partner(legs, partner(legs, k)) == k);
    }

    /** The leg that goes straight on, or -1. */
    private static int partner(List<Leg> legs, int k) {
        for (int m = 0; m < legs.size(); m++) {
            if (m != k && legs.get(m).way.along(legs.get(k).way) < -STRAIGHT) {
                return m;
            }
        }
        return -1;
    }
}
