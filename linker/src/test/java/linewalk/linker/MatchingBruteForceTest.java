package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.linker.Facts.Flows;
import linewalk.linker.Facts.Label;
import linewalk.linker.Facts.Way;
import org.jgrapht.alg.matching.MaximumWeightBipartiteMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;

/** The matching against all matchings there are, on small random graphs (fixed seed). */
class MatchingBruteForceTest {

    private final Random random = new Random(20);

    @Test
    void nothingGainsMoreThanTheMatching() {
        for (int round = 0; round < 200; round++) {
            List<Pairing> pairs = pairs(4 + random.nextInt(6));
            double got =
                    Matching.best(pairs).stream().mapToDouble(Matching::gain).sum();
            assertThat(got).isCloseTo(best(pairs, 0, new HashSet<>()), within(1e-6));
        }
    }

    /** On two-sided graphs too large for brute force: JGraphT's own matching for those, another algorithm than ours. */
    @Test
    void noTwoSidedMatchingGainsMore() {
        for (int round = 0; round < 20; round++) {
            List<Pairing> pairs = pairs(40);
            pairs.removeIf(p -> side(p.a()) == side(p.b()));
            SimpleWeightedGraph<Slot, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
            for (Pairing p : pairs) {
                graph.addVertex(p.a());
                graph.addVertex(p.b());
                graph.setEdgeWeight(graph.addEdge(p.a(), p.b()), Matching.gain(p));
            }
            Map<Boolean, Set<Slot>> sides = graph.vertexSet().stream()
                    .collect(Collectors.partitioningBy(MatchingBruteForceTest::side, Collectors.toSet()));
            double most = new MaximumWeightBipartiteMatching<>(graph, sides.get(true), sides.get(false))
                    .getMatching()
                    .getWeight();
            double got =
                    Matching.best(pairs).stream().mapToDouble(Matching::gain).sum();
            assertThat(got).isCloseTo(most, within(1e-6));
        }
    }

    private static boolean side(Slot s) {
        return s.ref().id().charAt(1) % 2 == 0;
    }

    @Test
    void noSlotIsAnsweredTwice() {
        for (int round = 0; round < 50; round++) {
            Set<Slot> seen = new HashSet<>();
            Matching.best(pairs(12))
                    .forEach(p -> assertThat(seen.add(p.a()) && seen.add(p.b())).isTrue());
        }
    }

    private List<Pairing> pairs(int slots) {
        List<Pairing> pairs = new ArrayList<>();
        for (int i = 0; i < slots; i++) {
            for (int j = i + 1; j < slots; j++) {
                Facts facts = new Facts(
                        any(Way.values()),
                        any(Way.values()),
                        any(Label.values()),
                        any(Flows.values()),
                        random.nextBoolean());
                if (facts.score() > Facts.ENOUGH && random.nextInt(3) > 0) {
                    pairs.add(new Pairing(slot(i), slot(j), facts, 0));
                }
            }
        }
        return pairs;
    }

    private <T> T any(T[] values) {
        return values[random.nextInt(values.length)];
    }

    private static Slot slot(int i) {
        return new Slot(
                new Ref(
                        null,
                        "r" + (char) ('a' + i),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        1,
                        null,
                        null),
                0);
    }

    private static double best(List<Pairing> pairs, int from, Set<Slot> taken) {
        if (from == pairs.size()) {
            return 0;
        }
        Pairing p = pairs.get(from);
        double without = best(pairs, from + 1, taken);
        if (taken.contains(p.a()) || taken.contains(p.b())) {
            return without;
        }
        taken.add(p.a());
        taken.add(p.b());
        double with = Matching.gain(p) + best(pairs, from + 1, taken);
        taken.remove(p.a());
        taken.remove(p.b());
        return Math.max(with, without);
    }
}
