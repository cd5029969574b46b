package linewalk.renderer.layer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A layered drawing as far as crossings go. Flow runs from layer to layer; a line over several layers has a dummy node
 * in each layer that it passes. Lines within one layer, and lines that leave a node on the side they come from, are not
 * seen.
 *
 * @param order node names of each layer, from top to bottom
 * @param edges between neighbouring layers
 */
record Layers<N>(List<List<N>> order, List<Edge<N>> edges) {

    /**
     * One line.
     *
     * @param from in the earlier layer
     * @param fromPort its place among the ports of that side, from top to bottom; fixed
     * @param to in the layer after it
     */
    record Edge<N>(N from, int fromPort, N to, int toPort) {}

    Layers {
        order = order.stream().map(List::copyOf).toList();
        edges = List.copyOf(edges);
    }

    /** Pairs of lines between the same two layers that change sides. Lines from one port never cross. */
    int crossings() {
        Map<N, Integer> layer = new HashMap<>();
        Map<N, Integer> place = new HashMap<>();
        for (int l = 0; l < order.size(); l++) {
            for (int i = 0; i < order.get(l).size(); i++) {
                layer.put(order.get(l).get(i), l);
                place.put(order.get(l).get(i), i);
            }
        }
        int crossings = 0;
        for (int i = 0; i < edges.size(); i++) {
            Edge<N> a = edges.get(i);
            if (layer.get(a.to()) != layer.get(a.from()) + 1) {
                throw new IllegalArgumentException(a + " does not lead to the next layer");
            }
            for (Edge<N> b : edges.subList(i + 1, edges.size())) {
                boolean together = layer.get(a.from()).equals(layer.get(b.from()));
                int left = compare(place.get(a.from()), a.fromPort(), place.get(b.from()), b.fromPort());
                int right = compare(place.get(a.to()), a.toPort(), place.get(b.to()), b.toPort());
                crossings += together && left * right < 0 ? 1 : 0;
            }
        }
        return crossings;
    }

    private static int compare(int nodeA, int portA, int nodeB, int portB) {
        return Integer.signum(nodeA != nodeB ? nodeA - nodeB : portA - portB);
    }

    /** With a node and the one below it changed about. */
    Layers<N> swapped(int layer, int upper) {
        List<List<N>> changed = new ArrayList<>(order);
        List<N> nodes = new ArrayList<>(order.get(layer));
        Collections.swap(nodes, upper, upper + 1);
        changed.set(layer, nodes);
        return new Layers<>(changed, edges);
    }
}
