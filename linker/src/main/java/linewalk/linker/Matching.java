package linewalk.linker;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jgrapht.alg.matching.blossom.v5.KolmogorovWeightedMatching;
import org.jgrapht.alg.matching.blossom.v5.ObjectiveSense;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.jgrapht.util.SupplierUtil;

/**
 * The matching of least cost over slots: each slot is answered once at the most, and together as much is gained as can
 * be. Solved per connected group of candidates, exactly; a group larger than {@link #EXACT_SLOTS} takes its best pairs
 * first.
 */
final class Matching {

    static final int EXACT_SLOTS = 300;

    private Matching() {}

    static List<Pairing> best(List<Pairing> pairs) {
        List<Pairing> chosen = new ArrayList<>();
        for (List<Pairing> group : groups(pairs)) {
            chosen.addAll(group.size() == 1 ? group : solve(group));
        }
        return chosen;
    }

    private static Collection<List<Pairing>> groups(List<Pairing> pairs) {
        Map<Slot, Slot> root = new HashMap<>();
        for (Pairing p : pairs) {
            Slot a = find(root, p.a());
            Slot b = find(root, p.b());
            if (!a.equals(b)) {
                root.put(a.compareTo(b) < 0 ? b : a, a.compareTo(b) < 0 ? a : b);
            }
        }
        Map<Slot, List<Pairing>> groups = new TreeMap<>();
        pairs.forEach(p -> groups.computeIfAbsent(find(root, p.a()), k -> new ArrayList<>())
                .add(p));
        return groups.values();
    }

    private static Slot find(Map<Slot, Slot> root, Slot s) {
        Slot at = s;
        while (root.containsKey(at)) {
            Slot up = root.get(at);
            if (root.containsKey(up)) {
                root.put(at, root.get(up));
            }
            at = up;
        }
        return at;
    }

    private static List<Pairing> solve(List<Pairing> group) {
        group.sort(Comparator.comparing(Pairing::a).thenComparing(Pairing::b));
        Set<Slot> slots = new HashSet<>();
        group.forEach(p -> slots.addAll(List.of(p.a(), p.b())));
        return slots.size() <= EXACT_SLOTS ? exact(group) : greedy(group);
    }

    private static List<Pairing> exact(List<Pairing> group) {
        Map<Slot, Integer> number = new TreeMap<>();
        group.forEach(p -> {
            number.putIfAbsent(p.a(), number.size());
            number.putIfAbsent(p.b(), number.size());
        });
        // the algorithm makes vertices of its own, numbered after ours
        SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(
                SupplierUtil.createIntegerSupplier(number.size()), SupplierUtil.createDefaultWeightedEdgeSupplier());
        number.values().stream().sorted().forEach(graph::addVertex);
        Map<DefaultWeightedEdge, Pairing> byEdge = new HashMap<>();
        for (Pairing p : group) {
            DefaultWeightedEdge e = graph.addEdge(number.get(p.a()), number.get(p.b()));
            graph.setEdgeWeight(e, gain(p));
            byEdge.put(e, p);
        }
        List<Pairing> chosen = new ArrayList<>();
        new KolmogorovWeightedMatching<>(graph, ObjectiveSense.MAXIMIZE)
                .getMatching()
                .getEdges()
                .forEach(e -> chosen.add(byEdge.get(e)));
        return chosen;
    }

    static double gain(Pairing p) {
        return p.facts().score() - Facts.ENOUGH;
    }

    private static List<Pairing> greedy(List<Pairing> group) {
        Set<Slot> taken = new HashSet<>();
        List<Pairing> chosen = new ArrayList<>();
        group.sort(Comparator.comparingDouble(Matching::gain).reversed());
        for (Pairing p : group) {
            if (!taken.contains(p.a()) && !taken.contains(p.b())) {
                taken.addAll(List.of(p.a(), p.b()));
                chosen.add(p);
            }
        }
        return chosen;
    }
}
