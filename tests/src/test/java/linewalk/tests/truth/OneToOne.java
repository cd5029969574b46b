package linewalk.tests.truth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;

/** Pairs what is known with what was read, the cheapest pairs first, each thing once. */
final class OneToOne {

    /** The cost of a pair that cannot be. */
    static final double NEVER = Double.POSITIVE_INFINITY;

    private record Candidate(double cost, int known, int read) {}

    private OneToOne() {}

    /** Indices of known things to indices of read ones. */
    static <K, R> Map<Integer, Integer> match(List<K> known, List<R> read, ToDoubleBiFunction<K, R> cost) {
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < known.size(); i++) {
            for (int j = 0; j < read.size(); j++) {
                double c = cost.applyAsDouble(known.get(i), read.get(j));
                if (c != NEVER) {
                    candidates.add(new Candidate(c, i, j));
                }
            }
        }
        candidates.sort(Comparator.comparingDouble(Candidate::cost)
                .thenComparingInt(Candidate::known)
                .thenComparingInt(Candidate::read));
        Map<Integer, Integer> out = new LinkedHashMap<>();
        Set<Integer> taken = new HashSet<>();
        for (Candidate c : candidates) {
            if (!out.containsKey(c.known()) && taken.add(c.read())) {
                out.put(c.known(), c.read());
            }
        }
        return out;
    }
}
