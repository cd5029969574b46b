package linewalk.renderer;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import linewalk.drawing.End;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.linker.Leg;
import linewalk.linker.step.PressureClass;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Net;
import linewalk.renderer.scheme.Node;

/**
 * Which way oil goes along each net. On a path: along its legs. In a circuit's step: in fed lines away from the pump, in
 * return lines towards the tank. Elsewhere nothing is said.
 */
final class FlowWays {

    private static final Set<PressureClass> FED =
            Set.of(PressureClass.SUPPLY, PressureClass.INTENSIFIED, PressureClass.REDUCED, PressureClass.METERED);
    private static final List<PressureClass> BACK = List.of(PressureClass.RETURN, PressureClass.DRAIN);

    private static final Set<Kind> DEAD_ENDS =
            Set.of(Kind.GAUGE, Kind.TEST_POINT, Kind.SWITCH, Kind.PLUG, Kind.ACCUMULATOR);

    private final PrintJob job;
    private final SchemeBuilder.Built built;
    /** By net's name, how far down the flow each node stands. */
    private final Map<String, Map<Node, Integer>> ranks = new HashMap<>();

    FlowWays(PrintJob job, SchemeBuilder.Built built) {
        this.job = job;
        this.built = built;
        if (job.subject().isPath()) {
            job.subject().legs().forEach(this::leg);
        } else if (job.moment().state() != null) {
            spread(built.nodesOf(Kind.PUMP), FED, 1);
            // one by one: a valve's drain does not join its return
            BACK.forEach(c -> spread(built.nodesOf(Kind.TANK), Set.of(c), -1));
            spread(built.nodesOf(Kind.TANK), Set.of(PressureClass.INTAKE), 1);
        }
    }

    private void leg(Leg leg) {
        if (leg instanceof Leg.Along a) {
            built.scheme().nets().forEach(net -> {
                if (built.strands().get(net.name()).line().id().equals(a.line().id())) {
                    Map<Node, Integer> rank = ranks.computeIfAbsent(net.name(), k -> new HashMap<>());
                    rank(rank, net, a.from(), 0);
                    rank(rank, net, a.to(), 2);
                }
            });
        }
    }

    /** A doubt's mark that stands in the line takes the rank of the end behind it. */
    private static void rank(Map<Node, Integer> rank, Net net, End end, int value) {
        String port = end instanceof End.AtPort p ? p.port() : end instanceof End.AtReference r ? r.reference() : "";
        Net.Meeting at = net.meetings().stream()
                .filter(m -> m.port().equals(port))
                .findFirst()
                .orElse(null);
        if (at != null) {
            rank.putIfAbsent(at.node(), value);
            return;
        }
        net.meetings().stream()
                .filter(m -> m.node().figure() instanceof DoubtFigure)
                .forEach(m -> rank.putIfAbsent(m.node(), value));
    }

    /**
     * Of the ends of a net, those that are reached without it lie on the side of the start, the others beyond. Where all
     * are reached, or none, oil may go either way and nothing is said.
     */
    private void spread(List<Node> from, Set<PressureClass> along, int sign) {
        Map<Node, List<Net>> at = nets(net -> along.contains(job.moment().classOf(line(net))));
        Set<Net> all = new LinkedHashSet<>();
        at.values().forEach(all::addAll);
        Set<Node> ever = reached(from, at, null);
        for (Net net : all) {
            Set<Node> without = reached(from, at, net);
            Map<Node, Integer> rank = new HashMap<>();
            for (Net.Meeting m : net.meetings()) {
                if (ever.contains(m.node()) && !isDeadEnd(m.node(), at, net)) {
                    rank.put(m.node(), without.contains(m.node()) ? 1 - sign : 1 + sign);
                }
            }
            if (rank.values().stream().distinct().count() > 1) {
                ranks.put(net.name(), rank);
            }
        }
    }

    private Line line(Net net) {
        return built.strands().get(net.name()).line();
    }

    /** Oil stands in it: away from the net there is nothing but instruments. */
    private boolean isDeadEnd(Node node, Map<Node, List<Net>> at, Net net) {
        return reached(List.of(node), at, net).stream()
                .allMatch(n -> n.figure() instanceof CrossingFigure
                        || built.parts().containsKey(n)
                                && DEAD_ENDS.contains(built.parts().get(n).kind()));
    }

    private static Set<Node> reached(List<Node> from, Map<Node, List<Net>> at, Net without) {
        Set<Node> reached = new LinkedHashSet<>(from);
        Deque<Node> open = new ArrayDeque<>(from);
        while (!open.isEmpty()) {
            for (Net net : at.getOrDefault(open.removeFirst(), List.of())) {
                if (net != without) {
                    net.meetings().stream()
                            .map(Net.Meeting::node)
                            .filter(reached::add)
                            .forEach(open::addLast);
                }
            }
        }
        return reached;
    }

    private Map<Node, List<Net>> nets(Predicate<Net> wanted) {
        Map<Node, List<Net>> at = new LinkedHashMap<>();
        built.scheme().nets().stream().filter(wanted).forEach(net -> net.meetings()
                .forEach(m -> at.computeIfAbsent(m.node(), k -> new java.util.ArrayList<>())
                        .add(net)));
        return at;
    }

    /** 1 along the course, -1 against it, 0 where nothing is known. */
    int way(Layout.Course course) {
        Map<Node, Integer> rank = ranks.get(course.net().name());
        if (rank == null) {
            return 0;
        }
        Integer from = rank(rank, course.from());
        Integer to = rank(rank, course.to());
        return from == null || to == null ? 0 : Integer.signum(to - from);
    }

    private static Integer rank(Map<Node, Integer> rank, Net.Meeting m) {
        return m == null ? Integer.valueOf(1) : rank.get(m.node());
    }
}
