package linewalk.renderer.layer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

/** Finds pairs of neighbours in one layer whose change would take crossings away, from the lines at the two alone. */
final class NeighbourSwaps {

    private NeighbourSwaps() {}

    /**
     * One change for the better.
     *
     * @param saved how many crossings fewer
     */
    record Swap<N>(int layer, N upper, N lower, int saved) {}

    /** All changes for the better; none where the order of every layer is as good as single changes can make it. */
    static <N> List<Swap<N>> gains(Layers<N> layers) {
        return gains(layers, (upper, lower) -> true);
    }

    /** @param mayChange whether two neighbours are free to change places: the layout may hold some in order */
    static <N> List<Swap<N>> gains(Layers<N> layers, BiPredicate<N, N> mayChange) {
        List<Swap<N>> gains = new ArrayList<>();
        for (int l = 0; l < layers.order().size(); l++) {
            List<N> nodes = layers.order().get(l);
            for (int i = 1; i < nodes.size(); i++) {
                N upper = nodes.get(i - 1);
                N lower = nodes.get(i);
                int saved = saved(layers, upper, lower);
                if (saved > 0 && mayChange.test(upper, lower)) {
                    gains.add(new Swap<>(l, upper, lower, saved));
                }
            }
        }
        return gains;
    }

    private static <N> int saved(Layers<N> layers, N upper, N lower) {
        int saved = 0;
        for (boolean forward : new boolean[] {true, false}) {
            for (Layers.Edge<N> a : layers.edges()) {
                for (Layers.Edge<N> b : layers.edges()) {
                    if (near(a, forward).equals(upper) && near(b, forward).equals(lower)) {
                        // the line at the upper node ends lower: they cross now and would not after
                        saved += far(layers, a, b, forward);
                    }
                }
            }
        }
        return saved;
    }

    private static <N> N near(Layers.Edge<N> e, boolean forward) {
        return forward ? e.from() : e.to();
    }

    /** 1 where the first line's far end is below the second's, -1 where it is above, 0 where it is the same port. */
    private static <N> int far(Layers<N> layers, Layers.Edge<N> a, Layers.Edge<N> b, boolean forward) {
        N p = near(a, !forward);
        N q = near(b, !forward);
        if (p.equals(q)) {
            return Integer.signum(forward ? a.toPort() - b.toPort() : a.fromPort() - b.fromPort());
        }
        return Integer.signum(place(layers, p) - place(layers, q));
    }

    private static <N> int place(Layers<N> layers, N node) {
        return layers.order().stream()
                .mapToInt(l -> l.indexOf(node))
                .filter(i -> i >= 0)
                .findFirst()
                .orElseThrow();
    }
}
