package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** A scheme whose nodes and nets go by their places in its lists; a part of it is a set of numbers of nodes. */
final class Numbered {

    private final Scheme scheme;
    private final Map<Node, Integer> numbers = new IdentityHashMap<>();
    private final List<BitSet> nodesOfNets = new ArrayList<>();
    private final List<BitSet> netsOfNodes = new ArrayList<>();
    private final Map<BitSet, Bisection> bisections = new ConcurrentHashMap<>();

    Numbered(Scheme scheme) {
        this.scheme = scheme;
        for (Node node : scheme.nodes()) {
            numbers.put(node, numbers.size());
            netsOfNodes.add(new BitSet());
        }
        for (Net net : scheme.nets()) {
            BitSet nodes = new BitSet();
            net.meetings().forEach(m -> nodes.set(numbers.get(m.node())));
            nodes.stream().forEach(n -> netsOfNodes.get(n).set(nodesOfNets.size()));
            nodesOfNets.add(nodes);
        }
    }

    Scheme scheme() {
        return scheme;
    }

    BitSet all() {
        BitSet all = new BitSet();
        all.set(0, scheme.nodes().size());
        return all;
    }

    Node node(int number) {
        return scheme.nodes().get(number);
    }

    Net net(int number) {
        return scheme.nets().get(number);
    }

    List<Node> nodes(BitSet part) {
        return part.stream().mapToObj(this::node).toList();
    }

    int number(Node node) {
        return numbers.get(node);
    }

    boolean contains(BitSet part, Node node) {
        return part.get(number(node));
    }

    /** Numbers of the nodes that a net joins. */
    BitSet nodesOf(int net) {
        return nodesOfNets.get(net);
    }

    /** Numbers of the nets that a part has or shares with others. */
    BitSet netsOf(BitSet part) {
        BitSet nets = new BitSet();
        part.stream().forEach(n -> nets.or(netsOfNodes.get(n)));
        return nets;
    }

    /**
     * How a part falls in two, found once: columns of every width come from the same parts.
     *
     * @param part of two nodes or more
     */
    Bisection bisection(BitSet part) {
        return bisections.computeIfAbsent(part, p -> new Bisection(this, p));
    }

    static BitSet union(BitSet one, BitSet two) {
        BitSet both = (BitSet) one.clone();
        both.or(two);
        return both;
    }
}
