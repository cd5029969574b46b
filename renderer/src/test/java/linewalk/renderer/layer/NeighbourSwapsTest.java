package linewalk.renderer.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import linewalk.renderer.layer.Layers.Edge;
import linewalk.renderer.layer.NeighbourSwaps.Swap;
import org.junit.jupiter.api.Test;

/** The check for needless crossings, against counting every order anew. */
class NeighbourSwapsTest {

    private static <N> Edge<N> edge(N from, N to) {
        return new Edge<>(from, 0, to, 0);
    }

    @Test
    void twoCrossedLinesAreUndone() {
        Layers<String> crossed =
                new Layers<>(List.of(List.of("a", "b"), List.of("c", "d")), List.of(edge("a", "d"), edge("b", "c")));
        assertThat(crossed.crossings()).isEqualTo(1);
        assertThat(NeighbourSwaps.gains(crossed))
                .containsExactly(new Swap<>(0, "a", "b", 1), new Swap<>(1, "c", "d", 1));
        assertThat(NeighbourSwaps.gains(crossed.swapped(0, 0))).isEmpty();
        assertThat(NeighbourSwaps.gains(crossed, (upper, lower) -> !upper.equals("a")))
                .containsExactly(new Swap<>(1, "c", "d", 1));
    }

    /** Ports are fixed: two lines between the same two parts may have to cross, and no change of neighbours helps. */
    @Test
    void whatFixedPortsCrossStaysCrossed() {
        Layers<String> twisted = new Layers<>(
                List.of(List.of("a"), List.of("b")), List.of(new Edge<>("a", 0, "b", 1), new Edge<>("a", 1, "b", 0)));
        assertThat(twisted.crossings()).isEqualTo(1);
        assertThat(NeighbourSwaps.gains(twisted)).isEmpty();
    }

    /** A change that saves a crossing on one side and makes two on the other is none for the better. */
    @Test
    void bothSidesCount() {
        Layers<String> layers = new Layers<>(
                List.of(List.of("p", "q"), List.of("a", "b"), List.of("s", "t", "u")),
                List.of(edge("p", "b"), edge("q", "a"), edge("a", "s"), edge("a", "t"), edge("b", "u")));
        assertThat(layers.crossings()).isEqualTo(1);
        assertThat(NeighbourSwaps.gains(layers)).containsExactly(new Swap<>(0, "p", "q", 1));
    }

    /** One port with several lines: they part behind it and never cross there. */
    @Test
    void linesFromOnePortDoNotCross() {
        Layers<String> fan =
                new Layers<>(List.of(List.of("a"), List.of("b", "c")), List.of(edge("a", "c"), edge("a", "b")));
        assertThat(fan.crossings()).isZero();
        assertThat(NeighbourSwaps.gains(fan)).isEmpty();
    }

    @Test
    void everyGainIsWhatCountingAnewGives() {
        Random random = new Random(5);
        int gains = 0;
        int none = 0;
        for (int round = 0; round < 2000; round++) {
            Layers<Integer> layers = any(random);
            List<Swap<Integer>> counted = counted(layers);
            assertThat(NeighbourSwaps.gains(layers)).isEqualTo(counted);
            gains += counted.size();
            none += counted.isEmpty() ? 1 : 0;
        }
        assertThat(gains).isGreaterThan(500);
        assertThat(none).isGreaterThan(100);
    }

    /** Changes one after the other come to an end, never above the start nor below the best of all orders. */
    @Test
    void changesComeToAnEnd() {
        Random random = new Random(6);
        for (int round = 0; round < 100; round++) {
            Layers<Integer> layers = any(random);
            int before = layers.crossings();
            int best = best(layers, 0);
            for (List<Swap<Integer>> g = NeighbourSwaps.gains(layers); !g.isEmpty(); g = NeighbourSwaps.gains(layers)) {
                Swap<Integer> s = g.get(0);
                int now = layers.crossings();
                layers = layers.swapped(s.layer(), layers.order().get(s.layer()).indexOf(s.upper()));
                assertThat(layers.crossings()).isEqualTo(now - s.saved());
            }
            assertThat(layers.crossings()).isBetween(best, before);
        }
    }

    @Test
    void aLineMustLeadToTheNextLayer() {
        Layers<String> far = new Layers<>(List.of(List.of("a"), List.of("b"), List.of("c")), List.of(edge("a", "c")));
        assertThatThrownBy(far::crossings).isInstanceOf(IllegalArgumentException.class);
    }

    private static Layers<Integer> any(Random random) {
        List<List<Integer>> order = new ArrayList<>();
        int node = 0;
        for (int l = 0; l < 2 + random.nextInt(2); l++) {
            List<Integer> layer = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(4); i++) {
                layer.add(node++);
            }
            Collections.shuffle(layer, random);
            order.add(layer);
        }
        List<Edge<Integer>> edges = new ArrayList<>();
        for (int i = 0; i < random.nextInt(9); i++) {
            int l = random.nextInt(order.size() - 1);
            edges.add(new Edge<>(
                    order.get(l).get(random.nextInt(order.get(l).size())),
                    random.nextInt(3),
                    order.get(l + 1).get(random.nextInt(order.get(l + 1).size())),
                    random.nextInt(3)));
        }
        return new Layers<>(order, edges);
    }

    private static List<Swap<Integer>> counted(Layers<Integer> layers) {
        List<Swap<Integer>> gains = new ArrayList<>();
        for (int l = 0; l < layers.order().size(); l++) {
            List<Integer> nodes = layers.order().get(l);
            for (int i = 0; i + 1 < nodes.size(); i++) {
                int saved = layers.crossings() - layers.swapped(l, i).crossings();
                if (saved > 0) {
                    gains.add(new Swap<>(l, nodes.get(i), nodes.get(i + 1), saved));
                }
            }
        }
        return gains;
    }

    /** The fewest crossings over all orders of all layers from the given one on. */
    private static int best(Layers<Integer> layers, int layer) {
        if (layer == layers.order().size()) {
            return layers.crossings();
        }
        return best(layers, layer, 0);
    }

    private static int best(Layers<Integer> layers, int layer, int fixed) {
        int n = layers.order().get(layer).size();
        if (fixed == n) {
            return best(layers, layer + 1);
        }
        int best = Integer.MAX_VALUE;
        for (int i = fixed; i < n; i++) {
            // brings each of the rest to this place in turn
            Layers<Integer> tried = layers;
            for (int k = i; k > fixed; k--) {
                tried = tried.swapped(layer, k - 1);
            }
            best = Math.min(best, best(tried, layer, fixed + 1));
        }
        return best;
    }
}
