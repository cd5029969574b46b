package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;

/** What one square joins and what it blocks. */
final class SquareReader {

    /** How far before the side a passage may stop, and how far beside a port's place it may leave, in sizes. */
    private static final double SHORT = 0.16;

    static final double BESIDE = 0.1;

    private final Box square;
    private final double sidePt;
    private final double tolPt;
    private final List<Place> expected;
    private final List<Ink> ink = new ArrayList<>();
    private final List<Ink> dots = new ArrayList<>();
    private final List<Ink> balls = new ArrayList<>();
    private final List<Head> heads;
    private final Joins joins;
    private final Map<Integer, List<Integer>> groups;
    private final Map<Integer, Set<Place>> places = new LinkedHashMap<>();
    private final Set<Integer> throttled = new HashSet<>();

    /** @param expected where lines meet the square at rest */
    SquareReader(Box square, List<Ink> drawn, List<Place> expected, double tolPt) throws Doubt {
        this.square = square;
        this.sidePt = Math.min(square.widthPt(), square.heightPt());
        this.tolPt = tolPt;
        this.expected = expected;
        List<Ink> inside = SquareInk.of(square, drawn, tolPt);
        HeadFinder found = new HeadFinder(inside, sidePt, tolPt);
        heads = found.heads();
        for (Ink k : inside) {
            if (found.used().contains(k)) {
                continue;
            }
            if (k.round() && k.sizePt() < 0.5 * sidePt) {
                (k.filled() || k.sizePt() < 0.1 * sidePt ? dots : balls).add(k);
            } else {
                ink.add(k);
            }
        }
        extendToTips();
        joins = new Joins(ink, dots, tolPt);
        groups = joins.groups();
        leave();
    }

    /** A shaft that stops at its head's base leads on to the tip. */
    private void extendToTips() {
        for (Head h : heads) {
            for (int i = 0; i < ink.size(); i++) {
                Ink k = ink.get(i);
                if (k.closed()) {
                    continue;
                }
                List<Point> p = new ArrayList<>(k.points());
                if (stopsIn(h, k.last(), k.inward(false))) {
                    p.set(p.size() - 1, h.tip());
                } else if (stopsIn(h, k.first(), k.inward(true))) {
                    p.set(0, h.tip());
                }
                ink.set(i, k.with(p));
            }
        }
    }

    private boolean stopsIn(Head h, Point end, Direction back) {
        double ahead = h.direction().ahead(h.base(), end);
        return ahead > -1.5 * tolPt
                && ahead < h.lengthPt() + tolPt
                && h.direction().aside(h.base(), end) <= tolPt
                && back.along(h.direction()) < -0.9;
    }

    private void leave() throws Doubt {
        for (Map.Entry<Integer, List<Integer>> g : groups.entrySet()) {
            Set<Place> out = new LinkedHashSet<>();
            for (int i : g.getValue()) {
                Ink k = ink.get(i);
                if (!k.closed()) {
                    leave(i, k.first(), k.inward(true), out);
                    leave(i, k.last(), k.inward(false), out);
                }
            }
            places.put(g.getKey(), out);
        }
    }

    private void leave(int i, Point end, Direction inward, Set<Place> out) throws Doubt {
        boolean upper = end.yPt() - square.y0Pt() < square.y1Pt() - end.yPt();
        double gap = Math.abs(end.yPt() - (upper ? square.y0Pt() : square.y1Pt()));
        Place at = new Place(end.xPt() - square.x0Pt(), upper);
        if (gap <= tolPt) {
            add(at, out);
        } else if (gap < SHORT * sidePt && free(i, end) && Math.abs(inward.dy()) > 0.5 && inward.dy() > 0 == upper) {
            double on = gap / Math.abs(inward.dy());
            Place ahead = new Place(at.alongPt() - on * inward.dx(), upper);
            if (expected.stream().anyMatch(e -> e.near(ahead, BESIDE * sidePt))) {
                add(ahead, out);
            }
        } else if (Math.min(end.xPt() - square.x0Pt(), square.x1Pt() - end.xPt()) <= tolPt) {
            throw new Doubt("a passage ends at the side of a square");
        }
    }

    private void add(Place at, Set<Place> out) {
        Place known = expected.stream()
                .filter(e -> e.near(at, BESIDE * sidePt))
                .findFirst()
                .orElse(at);
        if (out.stream().noneMatch(o -> o.near(known, BESIDE * sidePt))) {
            out.add(known);
        }
    }

    private boolean free(int i, Point end) {
        for (int j = 0; j < ink.size(); j++) {
            if (j != i && ink.get(j).distancePt(end) <= tolPt) {
                return false;
            }
        }
        return balls.stream().noneMatch(b -> b.distancePt(end) <= tolPt);
    }

    List<Way> read() throws Doubt {
        certainCrossings();
        LooseMarks marks = new LooseMarks(sidePt, tolPt);
        places.forEach((g, out) -> {
            if (out.isEmpty() && balls.isEmpty()) {
                marks.add(pieces(g));
            }
        });
        List<Way> ways = new ArrayList<>();
        for (Ink ball : balls) {
            ways.add(check(ball));
        }
        for (Map.Entry<Integer, Set<Place>> e : places.entrySet()) {
            if (!e.getValue().isEmpty()) {
                ways.add(way(e.getKey(), e.getValue(), marks));
            }
        }
        bars(ways, marks);
        if (marks.left()) {
            throw new Doubt("a mark inside a square is not understood");
        }
        return ways;
    }

    private List<Ink> pieces(int group) {
        return groups.get(group).stream().map(ink::get).toList();
    }

    /** Two lines drawn as four ends cross where arrows say so; without arrows they may as well join. */
    private void certainCrossings() throws Doubt {
        for (Joins.Crossing c : joins.crossings()) {
            int a = joins.group(c.one());
            int b = joins.group(c.two());
            if (a != b && headed(a).isEmpty() && headed(b).isEmpty()) {
                throw new Doubt("four line ends meet inside a square without a dot");
            }
        }
        for (int i = 0; i < ink.size(); i++) {
            for (int j = 0; j < ink.size(); j++) {
                int a = joins.group(i);
                int b = joins.group(j);
                boolean both = places.get(a) != null && places.get(b) != null;
                if (a != b && both && !places.get(a).isEmpty() && !places.get(b).isEmpty() && bendsOn(i, j)) {
                    throw new Doubt("two passages touch inside a square");
                }
            }
        }
    }

    private boolean bendsOn(int i, int j) {
        Ink k = ink.get(i);
        for (int n = 1; n + 1 < k.points().size() && !k.curved(); n++) {
            if (ink.get(j).distancePt(k.points().get(n)) <= tolPt / 2) {
                return true;
            }
        }
        return false;
    }

    private Set<Place> headed(int group) {
        Set<Place> out = new LinkedHashSet<>();
        for (Head h : heads) {
            boolean on = pieces(group).stream()
                    .anyMatch(k -> k.distancePt(h.tip()) <= tolPt && k.distancePt(h.base()) <= 1.5 * tolPt);
            if (!on) {
                continue;
            }
            Place best = null;
            double most = 0;
            for (Place p : places.get(group)) {
                Point at = new Point(square.x0Pt() + p.alongPt(), p.upper() ? square.y0Pt() : square.y1Pt());
                double score = Direction.of(h.base(), at).along(h.direction());
                if (score > most) {
                    most = score;
                    best = p;
                }
            }
            if (best != null) {
                out.add(best);
            }
        }
        return out;
    }

    private Way way(int group, Set<Place> out, LooseMarks marks) throws Doubt {
        List<Ink> pieces = pieces(group);
        Set<Place> pointed = headed(group);
        boolean narrow = marks.throttle(pieces);
        if (out.size() == 1) {
            Box b = pieces.stream().map(Ink::box).reduce(Box::union).orElseThrow();
            boolean capped = pieces.size() > 1 || pieces.get(0).points().size() > 2;
            if (!pointed.isEmpty()
                    || !capped
                    || b.heightPt() > 0.65 * square.heightPt()
                    || b.widthPt() > 0.65 * sidePt) {
                throw new Doubt("a passage inside a square leads to no port");
            }
        }
        return new Way(List.copyOf(out), pointed, narrow, null);
    }

    /** A ball on its seat: oil comes in through the seat and leaves behind the ball. */
    private Way check(Ink ball) throws Doubt {
        Point c = ball.box().center();
        double r = ball.sizePt() / 2;
        Place seat = null;
        Place behind = null;
        for (Map.Entry<Integer, Set<Place>> e : places.entrySet()) {
            if (e.getValue().size() != 1) {
                continue;
            }
            List<Ink> pieces = pieces(e.getKey());
            boolean radial = pieces.stream().anyMatch(k -> radial(k, c, r));
            boolean near = pieces.stream().anyMatch(k -> Math.abs(k.distancePt(c) - r) <= 0.35 * r + tolPt);
            if (radial && behind == null) {
                behind = e.getValue().iterator().next();
            } else if (near && seat == null && pieces.size() > 1) {
                seat = e.getValue().iterator().next();
            } else if (near) {
                throw new Doubt("a check inside a square is not understood");
            }
        }
        if (seat == null || behind == null) {
            throw new Doubt("a check inside a square is not understood");
        }
        Place in = seat;
        Place out = behind;
        places.values().removeIf(p -> p.contains(in) || p.contains(out));
        return new Way(List.of(in, out), Set.of(out), false, in);
    }

    private boolean radial(Ink k, Point c, double r) {
        return !k.closed()
                && (radialEnd(k.first(), k.inward(true), c, r) || radialEnd(k.last(), k.inward(false), c, r));
    }

    private boolean radialEnd(Point end, Direction inward, Point c, double r) {
        return Math.abs(end.distancePt(c) - r) <= Math.min(tolPt, 0.25 * r)
                && Direction.of(c, end).along(inward) > 0.9;
    }

    private void bars(List<Way> ways, LooseMarks marks) {
        for (Place p : expected) {
            boolean said = ways.stream().anyMatch(w -> w.places().contains(p));
            double y = p.upper() ? square.y0Pt() : square.y1Pt();
            if (!said && marks.bar(square.x0Pt() + p.alongPt(), y)) {
                ways.add(new Way(List.of(p), Set.of(), false, null));
            }
        }
    }
}
