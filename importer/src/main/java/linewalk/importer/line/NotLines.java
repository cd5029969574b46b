package linewalk.importer.line;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Arrowhead;
import linewalk.importer.symbol.Body;

/** Takes out what looks like line work and is none: leaders, shafts, and pilot lines inside a valve's own figure. */
public final class NotLines {

    /** How far a valve's own pilot line may lead around it, as a share of its size. */
    private static final double OWN_PILOT = 0.9;

    /** How far from a valve its own pilot line may start, as a share of its square. */
    private static final double BESIDE = 0.6;

    /** How long the solid end of a dashed way is at most, in dashes. */
    private static final double DASHES = 1.8;

    /** How long such a piece without an arrow is at most, in sizes of its figure. */
    private static final double STUB = 0.7;

    private final double tolPt;
    private final Set<Node> references;
    private final Near<Arrowhead> arrows;
    private final Near<Label> labels;

    /** @param references line ends at references; a line that ends at any other outline is a leader */
    public NotLines(double tolPt, Set<Node> references, List<Arrowhead> arrows, List<Label> labels) {
        this.tolPt = tolPt;
        this.references = references;
        this.arrows = new Near<>(arrows, Arrowhead::box);
        this.labels = new Near<>(labels, Label::box);
    }

    public List<Net> without(List<Net> nets) {
        List<Net> bare = nets.stream().map(this::withoutLeaders).toList();
        Shafts shafts = new Shafts(bare, tolPt);
        Dimensions dimensions = new Dimensions(arrows, labels, tolPt);
        List<Net> kept = new ArrayList<>();
        for (Net line : bare.stream()
                .flatMap(n -> apart(n, shafts, dimensions).stream())
                .toList()) {
            if (!line.runs().isEmpty() && !leader(line)) {
                kept.add(withoutOwnPilots(line));
            }
        }
        return kept;
    }

    /** A net without shafts and dimension lines, and without what only they held. */
    private List<Net> apart(Net n, Shafts shafts, Dimensions dimensions) {
        Set<Run> dropped = shafts.of(n);
        dropped.addAll(dimensions.of(n));
        if (dropped.isEmpty()) {
            return List.of(n);
        }
        return without(n, dropped).pieces().stream()
                .filter(p -> p.contacts().size() > 1
                        || p.nodes().stream().anyMatch(x -> x.flag() != null || references.contains(x)))
                .toList();
    }

    private boolean leader(Net n) {
        boolean atReference = n.nodes().stream().anyMatch(references::contains);
        boolean atBubble = n.nodes().stream().anyMatch(x -> x.flag() != null);
        boolean oblique = n.runs().stream().anyMatch(NotLines::oblique);
        boolean line = atReference || n.contacts().size() > 1;
        boolean spring = !atReference && n.runs().stream().allMatch(NotLines::oblique) && staysBy(n);
        return spring || !line && (atBubble || oblique && n.runs().size() <= 3 || sticksOut(n));
    }

    /** Oblique pieces close by a figure, which lead nowhere or to a smaller shape there: a spring that was not made out. */
    private static boolean staysBy(Net n) {
        return n.contacts().stream().anyMatch(c -> {
            Box core = c.body().core();
            double size = Math.max(core.widthPt(), core.heightPt());
            Box reach = core.grow(OWN_PILOT * size);
            return n.runs().stream().allMatch(r -> r.points().stream().allMatch(reach::contains))
                    && n.contacts().stream()
                            .map(o -> o.body().core())
                            .allMatch(o ->
                                    o.equals(core) || reach.contains(o) && Math.max(o.widthPt(), o.heightPt()) < size);
        });
    }

    /** What sticks out of a figure and goes nowhere: the wire of a switch; longer with an arrow, the heat of a cooler. */
    private boolean sticksOut(Net n) {
        if (n.contacts().size() != 1 || n.runs().size() != 1) {
            return false;
        }
        if (n.contacts().get(0).body().reservoir()) {
            return false;
        }
        Box figure = n.contacts().get(0).body().core();
        boolean isShort = n.runs().get(0).lengthPt() < Math.max(figure.widthPt(), figure.heightPt());
        boolean stub = n.runs().get(0).lengthPt() < STUB * Math.max(figure.widthPt(), figure.heightPt());
        return isShort
                && n.freeEnds().stream()
                        .anyMatch(e ->
                                stub || !arrows.within(e.place(), 2 * tolPt).isEmpty());
    }

    private static boolean oblique(Run r) {
        for (int i = 1; i < r.points().size(); i++) {
            Segment s = new Segment(r.points().get(i - 1), r.points().get(i));
            if (!s.horizontal() && !s.vertical()) {
                return r.points().size() < 5;
            }
        }
        return false;
    }

    /** A dashed way from a port's line back to the same figure, close around it. */
    private Net withoutOwnPilots(Net n) {
        Set<Run> dropped = new HashSet<>();
        for (Node contact : n.contacts()) {
            List<Run> way = dashedWay(contact);
            Body body = contact.body();
            boolean both = n.contacts().stream().anyMatch(c -> c != contact && c.body() == body);
            if (!way.isEmpty() && both && !body.reservoir() && isAround(body, way)) {
                dropped.addAll(way);
            }
        }
        return without(n, dropped);
    }

    /** It starts beside a port and bends around the box's corner; farther off, or straight, it is a line around the part. */
    private boolean isAround(Body body, List<Run> way) {
        double size = Math.max(body.core().widthPt(), body.core().heightPt());
        Box reach = body.core().grow(OWN_PILOT * size + tolPt);
        Run last = way.get(way.size() - 1);
        double start = Math.max(
                body.distancePt(last.from().place()), body.distancePt(last.to().place()));
        long points = way.stream().mapToLong(r -> r.points().size() - 1).sum();
        return body.outlines().stream().anyMatch(o -> o.corners() == 4)
                && points > 1
                && start < BESIDE * Math.min(body.core().widthPt(), body.core().heightPt()) + tolPt
                && way.stream().allMatch(r -> r.points().stream().allMatch(reach::contains));
    }

    /** A leader may touch the line it speaks of: only the leader goes. It comes from a bubble, or points with an arrow. */
    private Net withoutLeaders(Net n) {
        Set<Run> dropped = new HashSet<>();
        for (Node end : n.nodes()) {
            if (references.contains(end) || end.body() != null || end.runs().size() != 1) {
                continue;
            }
            List<Run> way = Net.leg(end);
            if (way.stream().anyMatch(r -> references.contains(r.from()) || references.contains(r.to()))) {
                continue;
            }
            Run last = way.get(way.size() - 1);
            boolean says = pointedAt(last.from()) || pointedAt(last.to()) || textAt(end);
            boolean points = says && way.stream().anyMatch(NotLines::oblique);
            if (end.flag() != null || points) {
                dropped.addAll(way);
            }
        }
        return without(n, dropped);
    }

    /** A free end beside a text that is no reference. */
    private boolean textAt(Node end) {
        return end.free()
                && labels.within(end.place(), 12 * tolPt).stream()
                        .anyMatch(l -> l.box().distancePt(end.place()) < 0.6 * l.sizePt());
    }

    private boolean pointedAt(Node n) {
        return arrows.within(n.place(), 3 * tolPt).stream()
                .anyMatch(a -> a.tip().distancePt(n.place()) <= 3 * tolPt);
    }

    private static Net without(Net n, Set<Run> dropped) {
        if (dropped.isEmpty()) {
            return n;
        }
        dropped.forEach(r -> {
            r.from().runs().remove(r);
            r.to().runs().remove(r);
        });
        List<Run> runs = n.runs().stream().filter(r -> !dropped.contains(r)).toList();
        List<Node> nodes = n.nodes().stream().filter(x -> !x.runs().isEmpty()).toList();
        return new Net(nodes, runs, n.confidence(), n.doubts());
    }

    /** The run ends square on a line that goes on straight. */
    private static boolean branches(Node at, Run run) {
        List<Direction> others =
                at.runs().stream().filter(r -> r != run).map(r -> r.outward(at)).toList();
        Direction own = run.outward(at);
        return others.size() == 2
                && others.get(0).along(others.get(1)) < -0.98
                && Math.abs(own.along(others.get(0))) < 0.2;
    }

    /**
     * Dashed runs from a contact to where they meet solid line work or a line that goes on; empty where there is none. The
     * dash at the contact may be drawn whole, around a corner.
     */
    private static List<Run> dashedWay(Node contact) {
        List<Run> way = new ArrayList<>();
        Node at = contact;
        Run run = contact.runs().size() == 1 ? contact.run() : null;
        double solid = 0;
        while (run != null && run.dash().solid()) {
            solid += run.lengthPt();
            way.add(run);
            at = run.other(at);
            run = onward(at, run);
        }
        if (run == null || solid > DASHES * run.dash().onPt()) {
            return List.of();
        }
        while (run != null && !run.dash().solid()) {
            way.add(run);
            at = run.other(at);
            Run last = run;
            if (at.runs().stream().anyMatch(r -> r != last && r.dash().solid()) || branches(at, last)) {
                return way;
            }
            run = onward(at, last);
        }
        return List.of();
    }

    /** The only run that goes on from a node, or null. */
    private static Run onward(Node at, Run last) {
        return at.runs().size() == 2
                ? at.runs().stream().filter(r -> r != last).findFirst().orElse(null)
                : null;
    }
}
