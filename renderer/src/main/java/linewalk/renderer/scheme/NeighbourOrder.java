package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.eclipse.elk.alg.layered.graph.LGraph;
import org.eclipse.elk.alg.layered.graph.LNode;
import org.eclipse.elk.alg.layered.graph.LPort;
import org.eclipse.elk.alg.layered.graph.Layer;
import org.eclipse.elk.alg.layered.options.InternalProperties;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.graph.ElkNode;

/**
 * Changes neighbours of a layer about wherever that takes crossings away, until no single change does.
 *
 * <p>The kernel's own sweeps count a crossing for every pair of edges. What is drawn is less: edges of a net hang together
 * in the gap between two layers and are one tree, which another tree need cross only once to get past. So a change that
 * is worth nothing to the kernel may be seen on paper. Here trees are counted.
 *
 * <p>Needs layers in an order, lines over several layers split; leaves the same with another order. Neighbours are
 * whatever stands in the layer: nodes with the points at which their sideward lines turn, and passing lines.
 */
final class NeighbourOrder {

    /** Ports of one net in one gap. */
    private static final class Tree {
        /** Counted as the layer before it. */
        final int gap;

        final List<LPort> before = new ArrayList<>();
        final List<LPort> after = new ArrayList<>();

        Tree(int gap) {
            this.gap = gap;
        }
    }

    private final List<Layer> layers;
    private final Map<LNode, Integer> places = new IdentityHashMap<>();
    private final Map<LPort, Tree> trees = new IdentityHashMap<>();
    private final Predicate<LNode> isTurn;
    private boolean turnsCount;

    private NeighbourOrder(LGraph graph, Predicate<ElkNode> turns) {
        layers = graph.getLayers();
        isTurn = n -> n.getProperty(InternalProperties.ORIGIN) instanceof ElkNode origin && turns.test(origin);
        for (Layer layer : layers) {
            set(
                    layer,
                    blocks(layer.getNodes()).stream()
                            .flatMap(b -> together(b).stream())
                            .toList());
            layer.getNodes().forEach(n -> n.getPorts().forEach(this::reach));
        }
    }

    /** @param turns points where lines of a net only turn back: nothing is drawn there, so all others come first */
    static void improve(LGraph graph, Predicate<ElkNode> turns) {
        NeighbourOrder order = new NeighbourOrder(graph, turns);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Layer layer : order.layers) {
                changed |= order.improve(layer);
            }
        }
        order.turnsCount = true;
        order.layers.forEach(
                l -> List.copyOf(l.getNodes()).stream().filter(order.isTurn).forEach(n -> order.moveTurn(n, l)));
    }

    /** To the first of the places in its layer where its net crosses least. */
    private void moveTurn(LNode turn, Layer layer) {
        List<List<LNode>> others = blocks(layer.getNodes());
        others.removeIf(b -> b.contains(turn));
        int best = -1;
        int least = Integer.MAX_VALUE;
        for (int at = 0; at <= others.size(); at++) {
            place(with(others, turn, at));
            int crossings = ends(List.of(turn)).values().stream()
                    .mapToInt(this::crossings)
                    .sum();
            if (crossings < least) {
                best = at;
                least = crossings;
            }
        }
        set(layer, with(others, turn, best));
    }

    private static List<LNode> with(List<List<LNode>> others, LNode turn, int at) {
        List<List<LNode>> all = new ArrayList<>(others);
        all.add(at, List.of(turn));
        return flat(all);
    }

    private int crossings(Tree tree) {
        return new HashSet<>(trees.values())
                .stream()
                        .filter(t -> t != tree && t.gap == tree.gap)
                        .mapToInt(t -> crossings(tree, t))
                        .sum();
    }

    private void set(Layer layer, List<LNode> nodes) {
        place(nodes);
        layer.getNodes().clear();
        layer.getNodes().addAll(nodes);
    }

    private void place(List<LNode> nodes) {
        for (int i = 0; i < nodes.size(); i++) {
            places.put(nodes.get(i), i);
        }
    }

    /** All that hangs together with a port in its gap is one tree. */
    private void reach(LPort first) {
        if (trees.containsKey(first) || !first.getConnectedEdges().iterator().hasNext()) {
            return;
        }
        int layer = layers.indexOf(first.getNode().getLayer());
        Tree tree = new Tree(first.getSide() == PortSide.EAST ? layer : layer - 1);
        List<LPort> open = new ArrayList<>(List.of(first));
        trees.put(first, tree);
        for (int i = 0; i < open.size(); i++) {
            LPort p = open.get(i);
            (p.getSide() == PortSide.EAST ? tree.before : tree.after).add(p);
            p.getConnectedEdges().forEach(e -> {
                LPort other = e.getSource() == p ? e.getTarget() : e.getSource();
                if (trees.putIfAbsent(other, tree) == null) {
                    open.add(other);
                }
            });
        }
    }

    private boolean improve(Layer layer) {
        List<List<LNode>> blocks = blocks(layer.getNodes());
        boolean changed = false;
        for (int i = 0; i + 1 < blocks.size(); i++) {
            List<Tree[]> pairs = pairs(blocks.get(i), blocks.get(i + 1));
            int now = crossings(pairs);
            if (now == 0) {
                continue;
            }
            Collections.swap(blocks, i, i + 1);
            place(flat(blocks));
            if (crossings(pairs) < now) {
                changed = true;
            } else {
                Collections.swap(blocks, i, i + 1);
                place(flat(blocks));
            }
        }
        set(layer, flat(blocks));
        return changed;
    }

    private static List<LNode> flat(List<List<LNode>> blocks) {
        return blocks.stream().flatMap(List::stream).toList();
    }

    /** What must stay side by side: a node, the points where its sideward lines turn, and what stands between. */
    private static List<List<LNode>> blocks(List<LNode> nodes) {
        Map<LNode, Integer> last = new IdentityHashMap<>();
        for (int i = 0; i < nodes.size(); i++) {
            last.put(unit(nodes.get(i)), i);
        }
        List<List<LNode>> blocks = new ArrayList<>();
        int end = -1;
        for (int i = 0; i < nodes.size(); i++) {
            if (i > end) {
                blocks.add(new ArrayList<>());
            }
            end = Math.max(end, last.get(unit(nodes.get(i))));
            blocks.get(blocks.size() - 1).add(nodes.get(i));
        }
        return blocks;
    }

    /**
     * A passing line between a node and the point where its sideward line turns is crossed by that line. It goes to the
     * outside: the two may then cross in a gap instead, where a change of neighbours can still undo it.
     */
    private static List<LNode> together(List<LNode> block) {
        LNode node = block.stream()
                .map(NeighbourOrder::unit)
                .filter(u -> u.getType() == LNode.NodeType.NORMAL)
                .findFirst()
                .orElse(block.get(0));
        List<LNode> before = new ArrayList<>();
        List<LNode> own = new ArrayList<>();
        List<LNode> after = new ArrayList<>();
        for (int i = 0; i < block.size(); i++) {
            LNode n = block.get(i);
            (unit(n) == node ? own : i < block.indexOf(node) ? before : after).add(n);
        }
        before.addAll(own);
        before.addAll(after);
        return before;
    }

    private static LNode unit(LNode node) {
        LNode unit = node.getProperty(InternalProperties.IN_LAYER_LAYOUT_UNIT);
        return unit == null ? node : unit;
    }

    /** Pairs of trees of which one ends at the one block and one at the other: the rest is as it was after a change. */
    private List<Tree[]> pairs(List<LNode> left, List<LNode> right) {
        List<Tree[]> pairs = new ArrayList<>();
        Set<Set<Tree>> taken = new HashSet<>();
        for (Map.Entry<LPort, Tree> a : ends(left).entrySet()) {
            for (Map.Entry<LPort, Tree> b : ends(right).entrySet()) {
                boolean sameGap = a.getKey().getSide() == b.getKey().getSide();
                if (sameGap && a.getValue() != b.getValue() && taken.add(Set.of(a.getValue(), b.getValue()))) {
                    pairs.add(new Tree[] {a.getValue(), b.getValue()});
                }
            }
        }
        return pairs;
    }

    private Map<LPort, Tree> ends(List<LNode> block) {
        Map<LPort, Tree> ends = new HashMap<>();
        block.forEach(n -> n.getPorts().stream().filter(trees::containsKey).forEach(p -> ends.put(p, trees.get(p))));
        return ends;
    }

    private int crossings(List<Tree[]> pairs) {
        return pairs.stream().mapToInt(p -> crossings(p[0], p[1])).sum();
    }

    /**
     * Round the edge of the gap, ports of the two trees change k times from the one to the other and k times back: the
     * first divides the gap, and the second has ends in k of its parts. It takes k - 1 crossings to join them.
     */
    private int crossings(Tree a, Tree b) {
        List<LPort> round = new ArrayList<>(sorted(a.before, b.before));
        List<LPort> back = sorted(a.after, b.after);
        Collections.reverse(back);
        round.addAll(back);
        int changes = 0;
        for (int i = 0; i < round.size(); i++) {
            changes += trees.get(round.get(i)) != trees.get(round.get((i + 1) % round.size())) ? 1 : 0;
        }
        return Math.max(0, changes / 2 - 1);
    }

    private List<LPort> sorted(List<LPort> some, List<LPort> others) {
        List<LPort> all = new ArrayList<>(some);
        all.addAll(others);
        all.removeIf(p -> !turnsCount && isTurn.test(p.getNode()));
        all.sort(Comparator.<LPort>comparingInt(p -> places.get(p.getNode()))
                .thenComparingDouble(p -> p.getPosition().y));
        return all;
    }
}
