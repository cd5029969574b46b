package linewalk.importer.line;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import linewalk.drawing.Point;

/**
 * Line work that hangs together.
 *
 * @param confidence the least of its joins, 0 to 1
 * @param doubts where ends meet in a way that is drawn for crossings and for joins
 */
public record Net(List<Node> nodes, List<Run> runs, double confidence, List<Point> doubts) {

    static final double SURE = 0.98;
    private static final double FOUR_WAY = 0.6;

    public Net {
        nodes = List.copyOf(nodes);
        runs = List.copyOf(runs);
        doubts = List.copyOf(doubts);
    }

    /** Nodes at figures. */
    public List<Node> contacts() {
        return nodes.stream().filter(n -> n.body() != null).toList();
    }

    public List<Node> freeEnds() {
        return nodes.stream().filter(Node::free).toList();
    }

    /** Nodes with runs, sorted into what hangs together; each net with the doubts of its own nodes. */
    static List<Net> of(List<Node> nodes, Predicate<Node> doubtful) {
        List<Net> nets = new ArrayList<>();
        Set<Node> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Node start : nodes) {
            if (!start.runs().isEmpty() && seen.add(start)) {
                nets.add(from(start, seen, doubtful));
            }
        }
        return nets;
    }

    private static Net from(Node start, Set<Node> seen, Predicate<Node> doubtful) {
        List<Node> members = new ArrayList<>();
        Set<Run> held = new LinkedHashSet<>();
        Deque<Node> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            Node n = open.pop();
            members.add(n);
            for (Run r : n.runs()) {
                held.add(r);
                if (seen.add(r.other(n))) {
                    open.push(r.other(n));
                }
            }
        }
        List<Point> doubts = members.stream().filter(doubtful).map(Node::place).toList();
        return new Net(members, List.copyOf(held), doubts.isEmpty() ? SURE : FOUR_WAY, doubts);
    }

    /** What still hangs together after runs were taken out. */
    List<Net> pieces() {
        return of(nodes, n -> doubts.contains(n.place()));
    }

    /** The runs from a line end to the first place where the line meets anything. */
    public static List<Run> leg(Node end) {
        return leg(end, end.runs().size() == 1 ? end.run() : null);
    }

    /** The runs from a place along its first one to the next place where the line meets anything. */
    static List<Run> leg(Node from, Run first) {
        List<Run> leg = new ArrayList<>();
        Node at = from;
        Run run = first;
        while (run != null && !leg.contains(run)) {
            leg.add(run);
            at = run.other(at);
            Run last = run;
            run = at.runs().size() == 2 && at.body() == null
                    ? at.runs().stream().filter(r -> r != last).findFirst().orElse(null)
                    : null;
        }
        return leg;
    }

    @Override
    public boolean equals(Object o) {
        return this == o;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
