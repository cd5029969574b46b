package linewalk.renderer;

import java.awt.geom.Point2D;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.linker.Leg;
import linewalk.linker.step.Sense;
import linewalk.renderer.iso.Duty;
import linewalk.renderer.scheme.Net;
import linewalk.renderer.scheme.Node;

/**
 * Which way oil goes along each net. On a path: along its legs. In a circuit's step: as the step tells for the line's ends.
 * Elsewhere nothing is said.
 */
final class FlowWays {

    private final PrintJob job;
    private final SchemeBuilder.Built built;
    /** By net's name, whether oil comes in or leaves at each node; what is not told there lets nothing through. */
    private final Map<String, Map<Node, Sense>> senses = new HashMap<>();

    FlowWays(PrintJob job, SchemeBuilder.Built built) {
        this.job = job;
        this.built = built;
        if (job.subject().isPath()) {
            job.subject().legs().forEach(this::leg);
        } else if (job.moment().flows() != null) {
            built.scheme().nets().forEach(this::step);
        }
    }

    private void leg(Leg leg) {
        if (leg instanceof Leg.Along a) {
            built.scheme().nets().forEach(net -> {
                if (built.strands().get(net.name()).line().id().equals(a.line().id())) {
                    Map<Node, Sense> told = senses.computeIfAbsent(net.name(), k -> new HashMap<>());
                    tell(told, net, a.from(), Sense.IN);
                    tell(told, net, a.to(), Sense.OUT);
                }
            });
        }
    }

    /** A doubt's mark that stands in the line stands for the end behind it. */
    private static void tell(Map<Node, Sense> told, Net net, End end, Sense sense) {
        Net.Meeting at = net.meetings().stream()
                .filter(m -> m.port().equals(port(end)))
                .findFirst()
                .orElse(null);
        if (at != null) {
            told.putIfAbsent(at.node(), sense);
            return;
        }
        net.meetings().stream()
                .filter(m -> m.node().figure() instanceof DoubtFigure)
                .forEach(m -> told.putIfAbsent(m.node(), sense));
    }

    private static String port(End end) {
        return end instanceof End.AtPort p ? p.port() : end instanceof End.AtReference r ? r.reference() : "";
    }

    /** What stands for ends that the net does not show, a branch or a doubt's mark, tells only what these agree on. */
    private void step(Net net) {
        Line line = built.strands().get(net.name()).line();
        List<Sense> atEnds = job.moment().flows().senses().get(line.id());
        Map<Node, Sense> told = new HashMap<>();
        net.meetings().forEach(m -> told.put(m.node(), Sense.UNKNOWN));
        Set<Sense> unseen = new HashSet<>();
        for (int i = 0; i < atEnds.size(); i++) {
            String port = port(line.ends().get(i));
            Sense sense = atEnds.get(i);
            List<Net.Meeting> at =
                    net.meetings().stream().filter(m -> m.port().equals(port)).toList();
            at.forEach(m -> told.put(m.node(), sense));
            if (at.isEmpty()) {
                unseen.add(sense);
            }
        }
        Sense agreed = unseen.size() == 1 ? unseen.iterator().next() : Sense.UNKNOWN;
        net.meetings().stream()
                .map(Net.Meeting::node)
                .filter(n -> n.figure() instanceof StubFigure || n.figure() instanceof DoubtFigure)
                .forEach(n -> told.put(n, agreed));
        senses.put(net.name(), told);
    }

    /**
     * Which way oil goes at a point of a net: one way where all that hangs on one side of the point gives oil, or
     * all on the other takes it.
     *
     * @return a direction of length 1, or null where nothing is known
     */
    Point2D at(Net net, NetTree tree, Point2D point) {
        Map<Node, Sense> told = senses.get(net.name());
        if (told == null) {
            return null;
        }
        NetTree.Piece piece = tree.at(point);
        Set<Net.Meeting> before = piece == null ? null : tree.beyond(piece, false);
        Set<Net.Meeting> after = piece == null ? null : tree.beyond(piece, true);
        if (before == null || after == null) {
            return null;
        }
        Sense one = all(told, before);
        Sense other = all(told, after);
        if (one == Sense.STILL || other == Sense.STILL) {
            return null;
        }
        boolean onward = one == Sense.IN && other != Sense.IN || other == Sense.OUT && one != Sense.OUT;
        boolean back = one == Sense.OUT && other != Sense.OUT || other == Sense.IN && one != Sense.IN;
        if (onward == back) {
            return null;
        }
        Point2D from = onward ? tree.from(piece) : tree.to(piece);
        Point2D to = onward ? tree.to(piece) : tree.from(piece);
        double length = from.distance(to);
        return new Point2D.Double((to.getX() - from.getX()) / length, (to.getY() - from.getY()) / length);
    }

    /** On a path what is not told is no part of it, but where it goes on on another page; in a step it is not known. */
    private Sense all(Map<Node, Sense> told, Set<Net.Meeting> meetings) {
        return meetings.stream().map(m -> sense(told, m)).reduce(Sense.STILL, Sense::and);
    }

    /** What is told of a part holds for its working port: where its own control is fed by the same line, no oil goes. */
    private Sense sense(Map<Node, Sense> told, Net.Meeting m) {
        boolean path = job.subject().isPath();
        boolean still = path && !(m.node().figure() instanceof MatchFigure);
        return path && SideLines.of(m) == Duty.CONTROL
                ? Sense.STILL
                : told.getOrDefault(m.node(), still ? Sense.STILL : Sense.UNKNOWN);
    }
}
