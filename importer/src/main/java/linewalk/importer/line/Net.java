package linewalk.importer.line;

import java.util.List;
import linewalk.drawing.Point;

/**
 * Line work that hangs together.
 *
 * @param confidence the least of its joins, 0 to 1
 * @param doubts where ends meet in a way that is drawn for crossings and for joins
 */
public record Net(List<Node> nodes, List<Run> runs, double confidence, List<Point> doubts) {

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

    @Override
    public boolean equals(Object o) {
        return this == o;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
