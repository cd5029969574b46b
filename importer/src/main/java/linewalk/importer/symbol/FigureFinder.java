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
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/** Outlines that touch become one figure; then it takes the small strokes that belong to it. */
final class FigureFinder {

    /** How far around its outlines a figure may have small strokes, as a share of its size. */
    private static final double REACH = 0.8;

    /** The same of springs, which are longer than the ball that they hold. */
    private static final double SPRING_REACH = 2;

    /** A stroke that touches nothing belongs to a figure this near, as a share of the figure's size. */
    private static final double NEAR = 0.35;

    /** How long an arm of a seat is at most, in sizes of its ball. */
    private static final double ARM = 1.6;

    /** And how far from the ball it ends. */
    private static final double BESIDE = 0.35;

    /** The same where the middle of the arm lies on the ball. */
    private static final double TANGENT = 0.5;

    /** How far a line is interrupted for a text at most, in sizes of the figure at which it ends. */
    private static final double GAP = 2;

    private final List<Outline> outlines;
    private final List<Outline> flags;
    private final List<Box> tankNames;
    private final List<Stroke> strokes;
    private final double tolPt;
    private final Set<Stroke> leaders;
    private final StrokeTouch touch;
    private final Set<Stroke> left = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<Body> bodies = new ArrayList<>();
    private final List<Body> reservoirs = new ArrayList<>();
    private Near<Body> figures;

    /**
     * @param tanks drawn as closed boxes
     * @param tankNames words that only a reservoir holds
     * @param leaders of notes: strokes that may touch a figure and say nothing of where its own strokes lead
     */
    FigureFinder(
            List<Outline> outlines,
            List<Outline> tanks,
            List<Box> tankNames,
            List<Outline> flags,
            List<Stroke> strokes,
            Set<Stroke> leaders,
            double tolPt) {
        this.outlines = outlines;
        tanks.forEach(t -> reservoirs.add(ReservoirFinder.closed(t)));
        this.tankNames = tankNames;
        this.flags = flags;
        this.strokes = strokes;
        this.tolPt = tolPt;
        this.leaders = leaders;
        this.touch = new StrokeTouch(
                strokes.stream().filter(s -> !leaders.contains(s)).toList(), tolPt);
        left.addAll(strokes);
    }

    List<Body> find() {
        outlines.forEach(o -> left.remove(o.stroke()));
        groupOutlines();
        figures = new Near<>(bodies, Body::core);
        Caps caps = new Caps(strokes.stream().filter(left::contains).toList(), tolPt);
        for (Body b : bodies) {
            caps.over(b).forEach(s -> take(b, s));
        }
        List<Stroke> open = strokes.stream()
                .filter(s -> left.contains(s)
                        && outlines.stream().noneMatch(o -> o.box().contains(s.box())))
                .toList();
        reservoirs.addAll(new ReservoirFinder(open, tankNames, flags, touch, tolPt).find());
        reservoirs.forEach(tank -> tank.marks().forEach(left::remove));
        for (Body b : bodies) {
            takeSurelyOwn(b);
        }
        for (Body b : bodies) {
            takeConnected(b);
        }
        new Plates(bodies, strokes.stream().filter(left::contains).toList(), tolPt)
                .join()
                .forEach(left::remove);
        for (Body tank : reservoirs) {
            strokes.stream()
                    .filter(s -> left.contains(s) && tank.box().contains(s.box()) && free(s, tank))
                    .toList()
                    .forEach(s -> take(tank, s));
            bodies.add(tank);
        }
        return bodies;
    }

    /** Line work: what no figure took, in drawing order. */
    List<Stroke> rest() {
        return strokes.stream().filter(left::contains).toList();
    }

    private void groupOutlines() {
        Near<Outline> near = new Near<>(outlines, Outline::box);
        Set<Outline> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Outline start : outlines) {
            if (!seen.add(start)) {
                continue;
            }
            Body body = new Body(false);
            Deque<Outline> open = new ArrayDeque<>(List.of(start));
            while (!open.isEmpty()) {
                Outline o = open.pop();
                body.add(o);
                for (Outline other : near.touching(o.box().grow(tolPt))) {
                    if (!seen.contains(other) && o.meets(other, tolPt)) {
                        seen.add(other);
                        open.push(other);
                    }
                }
            }
            bodies.add(body);
        }
    }

    private Box reach(Body b, double sizes) {
        Box core = b.core();
        double size =
                Math.min(Math.max(core.widthPt(), core.heightPt()), 2 * Math.min(core.widthPt(), core.heightPt()));
        return core.grow(sizes * size + tolPt);
    }

    /** Inside the outline, springs, and strokes that hang free beside it. */
    private void takeSurelyOwn(Body b) {
        Box reach = reach(b, REACH);
        double near = NEAR * Math.min(b.core().widthPt(), b.core().heightPt()) + tolPt;
        boolean grown = true;
        for (int round = 0; grown && round < 3; round++) {
            grown = false;
            for (Stroke s : touch.in(reach(b, SPRING_REACH))) {
                boolean within = reach.contains(s.box()) || Motif.zigzag(s) || isPlate(b, s);
                if (within && left.contains(s) && surelyOwn(b, s, near)) {
                    take(b, s);
                    grown = true;
                }
            }
        }
    }

    private boolean surelyOwn(Body b, Stroke s, double nearPt) {
        boolean inside = s.points().stream().allMatch(p -> b.covers(p) || onOutline(b, p));
        if (inside && middleInside(b, s) || isPlate(b, s)) {
            return true;
        }
        if (figures.touching(s.box()).stream().anyMatch(o -> o != b && !o.reservoir() && holds(o, s))) {
            return false;
        }
        double gap = isBar(s) ? Math.min(gap(b, s), middleGap(b, s)) : gap(b, s);
        boolean hangs = touch.ofEnds(s).isEmpty() && !reachesOut(b, s) || arm(b, s);
        return gap <= (Motif.zigzag(s) ? tolPt : nearPt) && (Motif.zigzag(s) || hangs) && isNearest(b, s, gap);
    }

    /** Lies with its middle across the end of a line, both ends free, as the cup of a coupling does before its ball. */
    private boolean isBar(Stroke s) {
        Point middle = new Point(
                (s.first().xPt() + s.last().xPt()) / 2,
                (s.first().yPt() + s.last().yPt()) / 2);
        Set<Stroke> there = touch.at(middle, s);
        return s.points().size() == 2
                && touch.ofEnds(s).isEmpty()
                && there.stream().anyMatch(x -> touch.ofEnds(x).contains(s));
    }

    /** One outline of the figure is around all of the stroke. */
    private static boolean holds(Body b, Stroke s) {
        return b.outlines().stream().anyMatch(o -> s.points().stream().allMatch(o::covers));
    }

    /** The rule across the end of a spring of the figure; a line may come in on its other side. */
    private boolean isPlate(Body b, Stroke s) {
        return s.points().size() == 2
                && b.marks().stream()
                        .filter(Motif::zigzag)
                        .anyMatch(m -> (holds(s, m.first()) || holds(s, m.last()))
                                && Math.abs(Direction.of(m.first(), m.last()).along(Direction.of(s.first(), s.last())))
                                        < 0.5
                                && s.lengthPt() < m.first().distancePt(m.last()) + tolPt);
    }

    private boolean holds(Stroke s, Point p) {
        return new Segment(s.first(), s.last()).distancePt(p) <= tolPt;
    }

    /** Beside a filter stands the ball of its bypass, which has the arms of its seat around it. */
    private boolean isNearest(Body b, Stroke s, double gapPt) {
        return gapPt <= tolPt
                || figures.touching(s.box().grow(gapPt)).stream()
                        .filter(o -> o != b && o.outlines().stream().anyMatch(Outline::circle))
                        .noneMatch(o -> Math.min(gap(o, s), middleGap(o, s)) < gapPt - tolPt);
    }

    /** Springs stand on a figure with their last peak or with the end of their axis. */
    private static double gap(Body b, Stroke s) {
        List<Point> places = new ArrayList<>(s.points());
        if (Motif.zigzag(s)) {
            places.addAll(Motif.axisEnds(s));
        }
        return least(b, places);
    }

    /** From the nearest middle of a piece: the arms of a seat lie along their ball. */
    private static double middleGap(Body b, Stroke s) {
        List<Point> middles = new ArrayList<>();
        for (int i = 1; i < s.points().size(); i++) {
            Point p = s.points().get(i - 1);
            Point q = s.points().get(i);
            middles.add(new Point((p.xPt() + q.xPt()) / 2, (p.yPt() + q.yPt()) / 2));
        }
        return least(b, middles);
    }

    private static double least(Body b, List<Point> places) {
        return places.stream().mapToDouble(b::distancePt).min().orElse(Double.MAX_VALUE);
    }

    /** One arm of a seat: its free end stands beside the outline, its other end where the line comes in. */
    private boolean arm(Body b, Stroke s) {
        Box core = b.core();
        Point middle = new Point(
                (s.first().xPt() + s.last().xPt()) / 2,
                (s.first().yPt() + s.last().yPt()) / 2);
        double most = b.distancePt(middle) <= tolPt ? TANGENT : BESIDE;
        double nearPt = most * Math.min(core.widthPt(), core.heightPt()) + tolPt;
        return s.points().size() == 2
                && s.lengthPt() < ARM * Math.max(core.widthPt(), core.heightPt())
                && (beside(b, s, s.first(), nearPt) || beside(b, s, s.last(), nearPt));
    }

    private boolean beside(Body b, Stroke s, Point end, double nearPt) {
        double gap = b.distancePt(end);
        return gap > 0 && gap <= nearPt && touch.at(end, s).isEmpty();
    }

    private static boolean middleInside(Body b, Stroke s) {
        Point a = s.points().get(0);
        Point c = s.points().get(1);
        return b.covers(new Point((a.xPt() + c.xPt()) / 2, (a.yPt() + c.yPt()) / 2));
    }

    private boolean onOutline(Body b, Point p) {
        return b.outlines().stream().anyMatch(o -> o.box().distancePt(p) <= tolPt && o.edgeDistancePt(p) <= tolPt);
    }

    /** A straight stroke that leaves the outline is a short line rather than a mark of the figure. */
    private boolean reachesOut(Body b, Stroke s) {
        if (leadsOn(b, s)) {
            return true;
        }
        if (reservoirs.stream().anyMatch(t -> t.covers(s.first()) || t.covers(s.last()))) {
            return true;
        }
        boolean straight = s.points().size() == 2;
        boolean startsAt = b.distancePt(s.first()) <= tolPt != b.distancePt(s.last()) <= tolPt;
        double size = Math.min(b.core().widthPt(), b.core().heightPt());
        return straight && startsAt && s.lengthPt() > 0.5 * size;
    }

    /** Beyond a gap, such as that for its text, another stroke goes on from its free end. */
    private boolean leadsOn(Body b, Stroke s) {
        List<Point> all = s.points();
        return leadsOn(b, s, all.get(1), s.first()) || leadsOn(b, s, all.get(all.size() - 2), s.last());
    }

    private boolean leadsOn(Body b, Stroke s, Point before, Point end) {
        if (b.distancePt(end) <= tolPt || !touch.at(end, s).isEmpty()) {
            return false;
        }
        Direction onward = Direction.of(before, end);
        double most = GAP * Math.max(b.core().widthPt(), b.core().heightPt());
        Point far = end.plus(most * onward.dx(), most * onward.dy());
        return touch.endingIn(Box.around(List.of(end, far)).grow(tolPt)).stream()
                .filter(o -> o != s)
                .anyMatch(o -> goesOn(end, onward, most, o.first(), o.points().get(1))
                        || goesOn(
                                end,
                                onward,
                                most,
                                o.last(),
                                o.points().get(o.points().size() - 2)));
    }

    private boolean goesOn(Point end, Direction onward, double mostPt, Point start, Point next) {
        double gap = onward.ahead(end, start);
        return gap > tolPt
                && gap <= mostPt
                && onward.aside(end, start) <= tolPt / 2
                && onward.along(Direction.of(start, next)) > 0.99;
    }

    /** Groups of touching small strokes around the figure that lead nowhere else. */
    private void takeConnected(Body b) {
        Box reach = reach(b, REACH);
        Set<Stroke> candidates = touch.in(reach);
        candidates.removeIf(s -> !left.contains(s));
        Set<Stroke> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Stroke start : List.copyOf(candidates)) {
            if (seen.contains(start)) {
                continue;
            }
            List<Stroke> group = group(start, candidates, seen);
            if (group.stream().anyMatch(s -> touches(b, s))
                    && group.stream().allMatch(s -> leadsNowhere(s, group, b))
                    && (group.size() > 1 || !reachesOut(b, group.get(0)))) {
                group.forEach(s -> take(b, s));
            }
        }
    }

    private List<Stroke> group(Stroke start, Set<Stroke> candidates, Set<Stroke> seen) {
        List<Stroke> group = new ArrayList<>();
        Deque<Stroke> open = new ArrayDeque<>(List.of(start));
        seen.add(start);
        while (!open.isEmpty()) {
            Stroke s = open.pop();
            group.add(s);
            for (Stroke other : candidates) {
                boolean joined =
                        touch.ofEnds(s).contains(other) || touch.ofEnds(other).contains(s);
                if (joined && seen.add(other)) {
                    open.push(other);
                }
            }
        }
        return group;
    }

    private boolean touches(Body b, Stroke s) {
        return b.distancePt(s.first()) <= tolPt || b.distancePt(s.last()) <= tolPt;
    }

    /** No end lies on line work outside the group, on a flag or on another figure, and no line ends on it. */
    private boolean leadsNowhere(Stroke s, List<Stroke> group, Body b) {
        if (atFlag(s.first()) || atFlag(s.last()) || leadsOn(b, s)) {
            return false;
        }
        if (reservoirs.stream().anyMatch(t -> t.covers(s.first()) || t.covers(s.last()))) {
            return false;
        }
        for (Stroke other : touch.ofEnds(s)) {
            boolean own = group.contains(other)
                    || b.marks().contains(other)
                    || b.outlines().stream().anyMatch(o -> o.stroke() == other);
            if (!own) {
                return false;
            }
        }
        return strokes.stream()
                .filter(x -> x != s && left.contains(x) && !group.contains(x) && !leaders.contains(x))
                .filter(x -> x.box().grow(tolPt).intersects(s.box()))
                .noneMatch(x -> touch.ofEnds(x).contains(s));
    }

    private boolean atFlag(Point end) {
        return flags.stream().anyMatch(f -> f.box().distancePt(end) <= tolPt && f.edgeDistancePt(end) <= tolPt);
    }

    private boolean free(Stroke s, Body tank) {
        return touch.ofEnds(s).stream().allMatch(o -> tank.marks().contains(o));
    }

    private void take(Body b, Stroke s) {
        left.remove(s);
        b.add(s);
    }
}
