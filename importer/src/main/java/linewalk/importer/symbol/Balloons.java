package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * Item numbers in balloons name the part that their leader points at. A table on the sheet with that number in a row gives
 * the designation beside it; without one the number itself is the name.
 */
public final class Balloons {

    private static final Pattern ITEM = Pattern.compile("\\d{1,3}");

    /** How near to its part a leader's tip stands, in tolerances. */
    static final double AT_TOL = 8;

    private static final double SURE = 0.9;
    private static final double BY_NUMBER = 0.75;

    /** A leader's far end and the number in its balloon. */
    record Pointer(Stroke leader, Point tip, Label item) {

        boolean slants() {
            List<Point> way = leader.points();
            Segment last = tip.equals(way.get(0))
                    ? new Segment(way.get(0), way.get(1))
                    : new Segment(way.get(way.size() - 2), way.get(way.size() - 1));
            return !last.horizontal() && !last.vertical();
        }
    }

    private final List<Pointer> pointers = new ArrayList<>();

    Balloons(List<Outline> flags, List<Stroke> strokes, List<Label> labels, double tolPt) {
        List<Stroke> leaders = strokes.stream()
                .filter(s -> !s.closed()
                        && !s.curved()
                        && s.points().size() <= 3
                        && s.dash().solid())
                .toList();
        Near<Stroke> near = new Near<>(leaders, Stroke::box);
        for (Outline o : flags) {
            List<Label> inside = o.circle() ? FlagTest.inside(o, labels) : List.of();
            if (inside.size() == 1 && ITEM.matcher(inside.get(0).text()).matches()) {
                near.touching(o.box().grow(tolPt)).stream()
                        .flatMap(s -> tip(s, o, 1.5 * tolPt).map(tip -> new Pointer(s, tip, inside.get(0))).stream())
                        .forEach(pointers::add);
            }
        }
    }

    /** The end that is not at the balloon. */
    private static Optional<Point> tip(Stroke s, Outline balloon, double reachPt) {
        boolean first = balloon.edgeDistancePt(s.first()) <= reachPt;
        boolean last = balloon.edgeDistancePt(s.last()) <= reachPt;
        return first == last ? Optional.empty() : Optional.of(first ? s.last() : s.first());
    }

    List<Pointer> pointers() {
        return pointers;
    }

    /** Leaders that slant or end in an arrow: they touch what they point at and are no line of it. */
    Set<Stroke> leaders(List<Arrowhead> arrows, double tolPt) {
        Set<Stroke> leaders = Collections.newSetFromMap(new IdentityHashMap<>());
        pointers.stream()
                .filter(p -> p.slants() || arrows.stream().anyMatch(a -> a.tip().distancePt(p.tip) <= tolPt))
                .forEach(p -> leaders.add(p.leader));
        return leaders;
    }

    /** Leaders that slant into an outline: no line of it, and no mark. */
    Set<Stroke> intoOutlines(List<Outline> outlines, double tolPt) {
        Set<Stroke> into = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Pointer p : pointers) {
            boolean inside = outlines.stream()
                    .anyMatch(o -> o.box().grow(tolPt).contains(p.tip)
                            && (o.covers(p.tip) || o.edgeDistancePt(p.tip) <= tolPt));
            if (p.slants() && inside) {
                into.add(p.leader);
            }
        }
        return into;
    }

    /**
     * Names figures that have no designation of their own. Where most of those pointed at have none, numbers are the names
     * of this sheet, and what else stands beside a figure is a coil's or a pipe's.
     */
    void name(List<Body> bodies, Map<Body, Designations.Named> named, List<Label> labels, Symbols symbols) {
        double reach = AT_TOL * symbols.tolerancePt();
        Near<Body> near = new Near<>(bodies, Body::box);
        Map<Body, Pointer> at = new LinkedHashMap<>();
        for (Pointer p : pointers) {
            near.within(p.tip(), reach).stream()
                    .filter(b -> b.distancePt(p.tip()) <= reach && !b.reservoir())
                    .min(Comparator.comparingDouble(b -> b.distancePt(p.tip())))
                    .ifPresent(b -> at.putIfAbsent(b, p));
        }
        long other = at.keySet().stream().filter(named::containsKey).count();
        boolean numbers = other * 2 < at.size();
        at.forEach((b, p) -> {
            if (numbers || !named.containsKey(b)) {
                named.put(b, named(p.item(), labels, symbols));
            }
        });
    }

    private static Designations.Named named(Label item, List<Label> labels, Symbols symbols) {
        return labels.stream()
                .filter(l -> l.text().equals(item.text()) && symbols.inTable(l.center()))
                .flatMap(cell -> labels.stream()
                        .filter(l -> Designations.looksLike(l.text()) && symbols.inTable(l.center()))
                        .filter(l -> Math.abs(l.center().yPt() - cell.center().yPt()) < 0.5 * cell.sizePt())
                        .sorted(Comparator.comparingDouble(l -> l.box().distancePt(cell.box())))
                        .limit(1))
                .findFirst()
                .map(l -> new Designations.Named(l, SURE))
                .orElseGet(() -> new Designations.Named(item, BY_NUMBER));
    }
}
