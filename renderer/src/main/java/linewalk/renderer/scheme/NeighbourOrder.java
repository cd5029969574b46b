package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
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

    private final List<Layer> layers;
    private final Map<LPort, GapTree> trees = new IdentityHashMap<>();
    private final Map<Integer, List<GapTree>> treesOfGaps = new HashMap<>();
    private final Set<LNode> turns = Collections.newSetFromMap(new IdentityHashMap<>());
    private boolean turnsCount;

    private NeighbourOrder(LGraph graph, Predicate<ElkNode> isTurn) {
        layers = graph.getLayers();
        for (Layer layer : layers) {
            set(
                    layer,
                    blocks(layer.getNodes()).stream()
                            .flatMap(b -> together(b).stream())
                            .toList());
            layer.getNodes().stream()
                    .filter(n ->
                            n.getProperty(InternalProperties.ORIGIN) instanceof ElkNode origin && isTurn.test(origin))
                    .forEach(turns::add);
        }
        layers.forEach(l -> l.getNodes().forEach(n -> n.getPorts().forEach(this::reach)));
    }

    /** @param isTurn points where lines of a net only turn back: nothing is drawn there, so all others come first */
    static void improve(LGraph graph, Predicate<ElkNode> isTurn) {
        NeighbourOrder order = new NeighbourOrder(graph, isTurn);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Layer layer : order.layers) {
                changed |= order.improve(layer);
            }
            for (int i = 0; i < order.layers.size() && !changed; i++) {
                changed = order.improveWithNext(i);
            }
        }
        order.turnsCount = true;
        order.layers.forEach(l ->
                List.copyOf(l.getNodes()).stream().filter(order.turns::contains).forEach(n -> order.moveTurn(n, l)));
    }

    /** To the first of the places in its layer where its net crosses least. */
    private void moveTurn(LNode turn, Layer layer) {
        List<List<LNode>> others = blocks(layer.getNodes());
        others.removeIf(b -> b.contains(turn));
        int best = -1;
        int least = Integer.MAX_VALUE;
        for (int at = 0; at <= others.size(); at++) {
            place(with(others, turn, at));
            int crossings = ends(List.of(turn)).stream()
                    .mapToInt(e -> crossings(e.tree))
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

    private int crossings(GapTree tree) {
        int sum = 0;
        for (GapTree other : treesOfGaps.get(tree.gap)) {
            sum += other == tree ? 0 : tree.crossings(other, turnsCount);
        }
        return sum;
    }

    private void set(Layer layer, List<LNode> nodes) {
        place(nodes);
        layer.getNodes().clear();
        layer.getNodes().addAll(nodes);
    }

    private void place(List<LNode> nodes) {
        for (int i = 0; i < nodes.size(); i++) {
            nodes.get(i).id = i;
        }
    }

    /** All that hangs together with a port in its gap is one tree. */
    private void reach(LPort first) {
        if (trees.containsKey(first) || !first.getConnectedEdges().iterator().hasNext()) {
            return;
        }
        int layer = layers.indexOf(first.getNode().getLayer());
        GapTree tree = new GapTree(first.getSide() == PortSide.EAST ? layer : layer - 1);
        treesOfGaps.computeIfAbsent(tree.gap, k -> new ArrayList<>()).add(tree);
        List<LPort> open = new ArrayList<>(List.of(first));
        trees.put(first, tree);
        for (int i = 0; i < open.size(); i++) {
            LPort p = open.get(i);
            tree.add(p, p.getSide() == PortSide.EAST, turns.contains(p.getNode()));
            p.getConnectedEdges().forEach(e -> {
                LPort other = e.getSource() == p ? e.getTarget() : e.getSource();
                if (trees.putIfAbsent(other, tree) == null) {
                    open.add(other);
                }
            });
        }
    }

    private boolean improve(Layer layer) {
        List<LNode> turning = layer.getNodes().stream().filter(turns::contains).toList();
        List<List<LNode>> blocks =
                blocks(layer.getNodes().stream().filter(n -> !turns.contains(n)).toList());
        place(flat(blocks));
        boolean changed = false;
        for (int i = 0; i + 1 < blocks.size(); i++) {
            List<GapTree[]> pairs = pairs(blocks.get(i), blocks.get(i + 1));
            int now = crossings(pairs);
            if (now == 0) {
                continue;
            }
            change(blocks, i);
            if (crossings(pairs) < now) {
                changed = true;
            } else {
                change(blocks, i);
            }
        }
        if (changed) {
            blocks.add(turning);
            set(layer, flat(blocks));
        }
        return changed;
    }

    /**
     * A change that by itself takes no crossing away may do so together with one in the layers beside it: a passing line
     * changes over to the other side of a net in both.
     */
    private boolean improveWithNext(int at) {
        Layer layer = layers.get(at);
        List<Layer> beside = layers.subList(Math.max(0, at - 1), Math.min(layers.size(), at + 2)).stream()
                .filter(l -> l != layer)
                .toList();
        List<LNode> turning = layer.getNodes().stream().filter(turns::contains).toList();
        List<List<LNode>> blocks =
                blocks(layer.getNodes().stream().filter(n -> !turns.contains(n)).toList());
        place(flat(blocks));
        for (int i = 0; i + 1 < blocks.size(); i++) {
            List<GapTree[]> pairs = pairs(blocks.get(i), blocks.get(i + 1));
            int now = crossings(pairs);
            if (now == 0) {
                continue;
            }
            change(blocks, i);
            if (crossings(pairs) == now && improveAny(beside)) {
                blocks.add(turning);
                set(layer, flat(blocks));
                return true;
            }
            change(blocks, i);
        }
        return false;
    }

    private static void change(List<List<LNode>> blocks, int left) {
        int place = blocks.get(left).get(0).id;
        Collections.swap(blocks, left, left + 1);
        for (List<LNode> block : blocks.subList(left, left + 2)) {
            for (LNode n : block) {
                n.id = place++;
            }
        }
    }

    private boolean improveAny(List<Layer> some) {
        boolean changed = false;
        for (Layer l : some) {
            changed |= improve(l);
        }
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

    /** A tree's end at a port on one side of a layer. */
    private record End(PortSide side, GapTree tree) {}

    /** Pairs of trees of which one ends at the one block and one at the other: the rest is as it was after a change. */
    private List<GapTree[]> pairs(List<LNode> left, List<LNode> right) {
        List<GapTree[]> pairs = new ArrayList<>();
        List<End> rights = ends(right);
        for (End a : ends(left)) {
            for (End b : rights) {
                if (a.side == b.side && a.tree != b.tree && isNew(a.tree, b.tree, pairs)) {
                    pairs.add(new GapTree[] {a.tree, b.tree});
                }
            }
        }
        return pairs;
    }

    private static boolean isNew(GapTree a, GapTree b, List<GapTree[]> pairs) {
        for (GapTree[] p : pairs) {
            if (p[0] == a && p[1] == b || p[0] == b && p[1] == a) {
                return false;
            }
        }
        return true;
    }

    private List<End> ends(List<LNode> block) {
        List<End> ends = new ArrayList<>();
        for (LNode n : block) {
            for (LPort p : n.getPorts()) {
                GapTree tree = trees.get(p);
                if (tree != null) {
                    ends.add(new End(p.getSide(), tree));
                }
            }
        }
        return ends;
    }

    private int crossings(List<GapTree[]> pairs) {
        int sum = 0;
        for (GapTree[] p : pairs) {
            sum += p[0].crossings(p[1], turnsCount);
        }
        return sum;
    }
}
