package linewalk.importer.symbol;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/** The rings of small bows that drafters draw around what a revision changed: neither parts nor lines. */
final class Clouds {

    private static final int LEAST_BOWS = 8;

    /** A ring is more bows across than this, both ways: springs and knurls are not. */
    private static final double ACROSS = 2.5;

    private static final double LEAST_BOW = Math.toRadians(35);
    private static final double MOST_BOW = Math.toRadians(300);
    private static final double CUSP = Math.toRadians(45);

    /** Two bows that go on smoothly make a rounder one: the cosine between the ways out of where they meet. */
    private static final double SMOOTH = -0.6;

    /** @param chordPt from the first end to the last of its bows, the mean */
    private record Bows(Stroke stroke, int count, double chordPt) {}

    private record End(Bows of, Point place, Direction inward) {}

    private Clouds() {}

    /** The strokes of such rings. */
    static Set<Stroke> find(List<Stroke> strokes, double tolPt) {
        List<Bows> all =
                strokes.stream().map(Clouds::bows).filter(b -> b.count > 0).toList();
        Set<Stroke> found = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Set<Bows> ring : rings(all, tolPt)) {
            Box box = ring.stream().map(b -> b.stroke.box()).reduce(Box::union).orElseThrow();
            int count = ring.stream().mapToInt(Bows::count).sum();
            double chord = ring.stream().mapToDouble(b -> b.count * b.chordPt).sum() / count;
            if (count >= LEAST_BOWS && Math.min(box.widthPt(), box.heightPt()) > ACROSS * chord) {
                ring.forEach(b -> found.add(b.stroke));
            }
        }
        return found;
    }

    private static List<Set<Bows>> rings(List<Bows> all, double tolPt) {
        Near<End> near = new Near<>(all.stream().flatMap(b -> ends(b).stream()).toList(), e -> Box.around(e.place));
        Set<Bows> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Set<Bows>> rings = new ArrayList<>();
        for (Bows start : all) {
            if (!seen.add(start)) {
                continue;
            }
            Set<Bows> ring = Collections.newSetFromMap(new IdentityHashMap<>());
            Deque<Bows> open = new ArrayDeque<>(List.of(start));
            while (!open.isEmpty()) {
                Bows b = open.pop();
                ring.add(b);
                ends(b).stream()
                        .flatMap(a -> near.within(a.place, tolPt).stream()
                                .filter(o -> a.inward.along(o.inward) > SMOOTH)
                                .map(End::of))
                        .filter(seen::add)
                        .forEach(open::push);
            }
            rings.add(ring);
        }
        return rings;
    }

    private static List<End> ends(Bows b) {
        List<Point> p = b.stroke.points();
        int n = p.size();
        return b.stroke.closed()
                ? List.of()
                : List.of(
                        new End(b, p.get(0), Direction.of(p.get(0), p.get(1))),
                        new End(b, p.get(n - 1), Direction.of(p.get(n - 1), p.get(n - 2))));
    }

    /** How many bows to one side, with cusps between them, the stroke is; none where it is anything else. */
    private static Bows bows(Stroke s) {
        List<Point> p = s.points();
        int n = p.size();
        Bows none = new Bows(s, 0, 0);
        if (n < 3 || !s.dash().solid()) {
            return none;
        }
        double[] turns = new double[n];
        double sides = 0;
        for (int i = s.closed() ? 0 : 1; i < (s.closed() ? n : n - 1); i++) {
            Direction a = Direction.of(p.get((i + n - 1) % n), p.get(i));
            Direction b = Direction.of(p.get(i), p.get((i + 1) % n));
            turns[i] = Math.atan2(a.dx() * b.dy() - a.dy() * b.dx(), a.along(b));
            sides += Math.abs(turns[i]) > CUSP ? 0 : turns[i];
        }
        int start = 0;
        while (s.closed() && start < n && !cusp(turns[start], sides)) {
            start++;
        }
        if (start == n || sides == 0) {
            return none;
        }
        int count = 0;
        double bow = 0;
        double chords = 0;
        Point from = p.get(start);
        for (int k = 1; k < n + (s.closed() ? 1 : 0); k++) {
            int i = (start + k) % n;
            boolean end = k == n - 1 && !s.closed() || cusp(turns[i], sides);
            if (!end && turns[i] * sides < -1e-3 || !end && Math.abs(turns[i]) > Math.PI / 2) {
                return none;
            }
            bow += end ? 0 : Math.abs(turns[i]);
            if (end) {
                if (bow < LEAST_BOW || bow > MOST_BOW) {
                    return none;
                }
                count++;
                chords += from.distancePt(p.get(i));
                from = p.get(i);
                bow = 0;
            }
        }
        return new Bows(s, count, chords / count);
    }

    /** Sharply to the other side. */
    private static boolean cusp(double turn, double sides) {
        return turn * sides < 0 && Math.abs(turn) > CUSP;
    }
}
