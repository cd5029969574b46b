package linewalk.tests.quality;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A layered drawing as far as crossings go: what stands in each layer, and the lines in the gaps between. A line that
 * passes a layer has a place of its own in it. What a net draws in one gap hangs together and is one tree; it ends at
 * ports of the layer above and of the layer below, or of one of them alone.
 *
 * @param order names of each layer from left to right, layers from above downwards
 */
record Layers<N>(List<List<N>> order, List<Tree<N>> trees) {

    /** @param port its place among the ports of that node in that gap, from left to right; fixed */
    record End<N>(N node, double port) {}

    /**
     * A net in one gap.
     *
     * @param gap 0 is below the first layer, -1 above it: lines turn back there
     * @param above ends at the gap's upper side
     */
    record Tree<N>(int gap, List<End<N>> above, List<End<N>> below) {
        Tree {
            above = List.copyOf(above);
            below = List.copyOf(below);
        }
    }

    /**
     * Neighbours of one layer whose change would take crossings away.
     *
     * @param saved how many crossings fewer
     */
    record Swap<N>(int layer, N left, N right, int saved) {}

    Layers {
        order = order.stream().map(List::copyOf).toList();
        trees = List.copyOf(trees);
    }

    /** The fewest crossings that the order allows, however the lines are led within the gaps. */
    int crossings() {
        int crossings = 0;
        for (int gap = -1; gap < order.size(); gap++) {
            crossings += crossings(gap);
        }
        return crossings;
    }

    private int crossings(int gap) {
        List<Tree<N>> here = trees.stream().filter(t -> t.gap == gap).toList();
        Map<N, Integer> above = places(gap);
        Map<N, Integer> below = places(gap + 1);
        int crossings = 0;
        for (int i = 0; i < here.size(); i++) {
            for (Tree<N> other : here.subList(i + 1, here.size())) {
                crossings += crossings(here.get(i), other, above, below);
            }
        }
        return crossings;
    }

    private Map<N, Integer> places(int layer) {
        Map<N, Integer> places = new HashMap<>();
        if (layer >= 0 && layer < order.size()) {
            order.get(layer).forEach(n -> places.put(n, places.size()));
        }
        return places;
    }

    private record Mark(double place, double port, boolean ofFirst) {}

    /**
     * Around the gap's edge, ends of the two trees change k times from one to the other and k times back. The first
     * tree then divides the gap so that the other must get from each of k parts to each other: k - 1 crossings, and
     * no more are needed.
     */
    private static <N> int crossings(Tree<N> a, Tree<N> b, Map<N, Integer> above, Map<N, Integer> below) {
        List<Mark> round = new ArrayList<>(side(a.above, b.above, above));
        List<Mark> back = side(a.below, b.below, below);
        Collections.reverse(back);
        round.addAll(back);
        int changes = 0;
        for (int i = 0; i < round.size(); i++) {
            changes += round.get(i).ofFirst != round.get((i + 1) % round.size()).ofFirst ? 1 : 0;
        }
        return Math.max(0, changes / 2 - 1);
    }

    private static <N> List<Mark> side(List<End<N>> a, List<End<N>> b, Map<N, Integer> places) {
        List<Mark> side = new ArrayList<>();
        a.forEach(e -> side.add(new Mark(places.get(e.node), e.port, true)));
        b.forEach(e -> side.add(new Mark(places.get(e.node), e.port, false)));
        side.sort((p, q) -> p.place != q.place ? Double.compare(p.place, q.place) : Double.compare(p.port, q.port));
        return side;
    }

    /** All changes for the better; none where the order of every layer is as good as single changes can make it. */
    List<Swap<N>> gains() {
        List<Swap<N>> gains = new ArrayList<>();
        for (int layer = 0; layer < order.size(); layer++) {
            int now = near(layer);
            for (int i = 0; i + 1 < order.get(layer).size(); i++) {
                int saved = now - swapped(layer, i).near(layer);
                if (saved > 0) {
                    gains.add(new Swap<>(
                            layer, order.get(layer).get(i), order.get(layer).get(i + 1), saved));
                }
            }
        }
        return gains;
    }

    /** Crossings in the gaps on both sides of a layer. */
    private int near(int layer) {
        return crossings(layer - 1) + crossings(layer);
    }

    /** With a node and the one right of it changed about. */
    Layers<N> swapped(int layer, int left) {
        List<List<N>> changed = new ArrayList<>(order);
        List<N> nodes = new ArrayList<>(order.get(layer));
        Collections.swap(nodes, left, left + 1);
        changed.set(layer, nodes);
        return new Layers<>(changed, trees);
    }
}
