package linewalk.importer.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/**
 * Dashes that a program wrote one by one and around corners are one dashed stroke: a pilot line with short legs, the chain
 * line around a unit. Each goes on straight ahead over an even gap. Straight rows of dashes are known before.
 */
final class DashedWays {

    private static final int PIECES = 4;

    /** So few are enough for a short leg that goes on from a dashed line. */
    private static final int LEG = 2;

    private static final double LONGEST_TOL = 45;
    private static final double EVEN = 0.35;

    private record End(Stroke stroke, boolean first) {

        Point place() {
            return first ? stroke.first() : stroke.last();
        }

        Direction out() {
            List<Point> p = stroke.points();
            int n = p.size();
            return first ? Direction.of(p.get(1), p.get(0)) : Direction.of(p.get(n - 2), p.get(n - 1));
        }

        End other() {
            return new End(stroke, !first);
        }
    }

    /** The strokes of one way in order, each with the end at which it is entered. */
    private record Way(List<End> entered, List<Double> gaps, boolean ring) {}

    private final double tolPt;
    private final List<Stroke> pieces;
    private final Near<End> ends;
    private final Map<Stroke, End[]> next = new IdentityHashMap<>();

    private DashedWays(List<Stroke> strokes, double tolPt) {
        this.tolPt = tolPt;
        this.pieces = strokes.stream().filter(this::isPiece).toList();
        List<End> all = pieces.stream()
                .flatMap(s -> List.of(new End(s, true), new End(s, false)).stream())
                .toList();
        ends = new Near<>(all, e -> Box.around(e.place()));
        for (End e : all) {
            End ahead = ahead(e);
            if (ahead != null && e.equals(ahead(ahead))) {
                next.computeIfAbsent(e.stroke, k -> new End[2])[e.first ? 0 : 1] = ahead;
            }
        }
    }

    static List<Stroke> join(List<Stroke> strokes, double tolPt) {
        DashedWays ways = new DashedWays(strokes, tolPt);
        Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Stroke> found = new ArrayList<>();
        for (Way w : ways.ways()) {
            if (ways.isDashed(w)) {
                w.entered.forEach(e -> used.add(e.stroke));
                found.add(ways.whole(w));
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

    private boolean isPiece(Stroke s) {
        boolean dash = s.dash().solid() && s.lengthPt() < LONGEST_TOL * tolPt && s.lengthPt() > 0.3 * tolPt;
        return !s.closed()
                && !s.curved()
                && s.points().size() > 1
                && (dash || !s.dash().solid());
    }

    /** The nearest end that faces this one over a gap. */
    private End ahead(End e) {
        Direction out = e.out();
        double reach = 1.1 * Math.max(onPt(e.stroke), tolPt);
        return ends.within(e.place(), Math.max(reach, LONGEST_TOL * tolPt / 2)).stream()
                .filter(o -> o.stroke != e.stroke || o.first != e.first)
                .filter(o -> out.ahead(e.place(), o.place()) > 0.3 * tolPt
                        && out.aside(e.place(), o.place()) < 0.4 * tolPt
                        && out.along(o.out()) < -0.99
                        && samePen(e.stroke, o.stroke)
                        && e.place().distancePt(o.place()) < 1.1 * Math.max(onPt(e.stroke), onPt(o.stroke)))
                .min(Comparator.comparingDouble((End o) -> e.place().distancePt(o.place()))
                        .thenComparing(o -> o.place().xPt())
                        .thenComparing(o -> o.place().yPt()))
                .orElse(null);
    }

    private static boolean samePen(Stroke a, Stroke b) {
        return Math.abs(a.widthPt() - b.widthPt()) < 0.1 * a.widthPt();
    }

    /** Its dashes where it is a row of them, else its longest leg. */
    private static double onPt(Stroke s) {
        double longest = s.dash().onPt();
        for (int i = 1; i < s.points().size() && s.dash().solid(); i++) {
            longest = Math.max(
                    longest, s.points().get(i - 1).distancePt(s.points().get(i)));
        }
        return longest;
    }

    private List<Way> ways() {
        Set<Stroke> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Way> ways = new ArrayList<>();
        for (Stroke s : pieces) {
            if (next.containsKey(s) && !seen.contains(s)) {
                Way way = from(start(s));
                way.entered.forEach(e -> seen.add(e.stroke));
                ways.add(way);
            }
        }
        return ways;
    }

    /** The end at which the way begins; any end of a ring. */
    private End start(Stroke s) {
        End at = new End(s, true);
        for (End back = next(at); back != null && back.stroke != s; back = next(at)) {
            at = back.other();
        }
        return at;
    }

    private End next(End e) {
        End[] both = next.get(e.stroke);
        return both == null ? null : both[e.first ? 0 : 1];
    }

    private Way from(End start) {
        List<End> entered = new ArrayList<>(List.of(start));
        List<Double> gaps = new ArrayList<>();
        End out = start.other();
        for (End in = next(out); in != null; in = next(out)) {
            gaps.add(out.place().distancePt(in.place()));
            if (in.equals(start)) {
                return new Way(entered, gaps, true);
            }
            entered.add(in);
            out = in.other();
        }
        return new Way(entered, gaps, false);
    }

    /** Several dashes, or a row of them that goes on; the gaps even, no piece longer than the dashes. */
    private boolean isDashed(Way w) {
        List<Stroke> solid = w.entered.stream()
                .map(End::stroke)
                .filter(s -> s.dash().solid())
                .toList();
        double dash = w.entered.stream()
                .mapToDouble(e -> e.stroke.dash().onPt())
                .max()
                .orElse(0);
        double longest = solid.stream().mapToDouble(DashedWays::onPt).max().orElse(0);
        double least = w.gaps.stream().mapToDouble(g -> g).min().orElse(0);
        double most = w.gaps.stream().mapToDouble(g -> g).max().orElse(0);
        // programs fit dashes to the leg; but between the long pieces of a chain line, its dots are rows of their own
        boolean several = dash > 0 && !Dash.alternate(longest, dash)
                ? !solid.isEmpty()
                : solid.size() >= (dash == 0 && goesOnFromDashed(w, longest) ? LEG : PIECES);
        return several && most - least < EVEN * most + 0.1 * tolPt;
    }

    /** Begins or ends where a dashed stroke of its pen does, whose dashes are about as long. */
    private boolean goesOnFromDashed(Way w, double longest) {
        End first = w.entered.get(0);
        End last = w.entered.get(w.entered.size() - 1).other();
        return !w.ring
                && List.of(first, last).stream().anyMatch(e -> ends.within(e.place(), tolPt).stream()
                        .anyMatch(o -> !Dash.alternate(longest, o.stroke.dash().onPt())
                                && samePen(o.stroke, e.stroke)
                                && o.place().distancePt(e.place()) <= tolPt));
    }

    private Stroke whole(Way w) {
        List<Point> points = new ArrayList<>();
        for (End e : w.entered) {
            List<Point> p = new ArrayList<>(e.stroke.points());
            if (!e.first) {
                Collections.reverse(p);
            }
            points.addAll(p);
        }
        Stroke like = w.entered.get(0).stroke;
        return new Stroke(corners(points, w.ring), w.ring, false, like.widthPt(), dash(w), false);
    }

    private static Dash dash(Way w) {
        boolean chain = w.entered.stream().anyMatch(e -> e.stroke.dash().chain());
        double[] lengths = w.entered.stream()
                .filter(e -> w.ring || e != w.entered.get(0) && e != w.entered.get(w.entered.size() - 1))
                .filter(e -> e.stroke.points().size() == 2)
                .mapToDouble(e -> onPt(e.stroke))
                .sorted()
                .toArray();
        double longest =
                w.entered.stream().mapToDouble(e -> onPt(e.stroke)).max().orElse(0);
        boolean alternate = lengths.length > 2 && Dash.alternate(lengths[lengths.length - 1], lengths[0]);
        return new Dash(longest, chain || alternate);
    }

    /** Without the points that lie on a straight leg. */
    private List<Point> corners(List<Point> points, boolean ring) {
        List<Point> out = new ArrayList<>();
        int n = points.size();
        for (int i = 0; i < n; i++) {
            boolean inner = ring || i > 0 && i < n - 1;
            Point before = out.isEmpty() ? points.get(n - 1) : out.get(out.size() - 1);
            boolean straight = inner
                    && Direction.of(before, points.get(i)).along(Direction.of(points.get(i), points.get((i + 1) % n)))
                            > 0.995;
            if (!straight) {
                out.add(points.get(i));
            }
        }
        return out;
    }
}
