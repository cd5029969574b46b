package linewalk.linker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which references are the two ends of one line, and how sure that is. */
final class Mates {

    private final Map<Slot, List<Pairing>> bySlot = new HashMap<>();
    private final Map<Ref, Map<Ref, Double>> byRef = new HashMap<>();
    final List<Pairing> pairings = new ArrayList<>();

    void add(Pairing p) {
        pairings.add(p);
        bySlot.computeIfAbsent(p.a(), k -> new ArrayList<>()).add(p);
        bySlot.computeIfAbsent(p.b(), k -> new ArrayList<>()).add(p);
        tie(p.a().ref(), p.b().ref(), p.confidence());
        tie(p.b().ref(), p.a().ref(), p.confidence());
    }

    private void tie(Ref a, Ref b, double confidence) {
        byRef.computeIfAbsent(a, k -> new HashMap<>()).merge(b, confidence, Math::max);
    }

    List<Pairing> of(Slot s) {
        return bySlot.getOrDefault(s, List.of());
    }

    boolean answered(Slot s) {
        return bySlot.containsKey(s);
    }

    boolean mated(Ref r) {
        return byRef.containsKey(r);
    }

    boolean mated(Ref a, Ref b) {
        return byRef.getOrDefault(a, Map.of()).containsKey(b);
    }

    /** Best first. */
    List<String> ids(Ref r) {
        return byRef.getOrDefault(r, Map.of()).entrySet().stream()
                .sorted(Map.Entry.<Ref, Double>comparingByValue()
                        .reversed()
                        .thenComparing(e -> e.getKey().id(), Comparator.naturalOrder()))
                .map(e -> e.getKey().id())
                .toList();
    }

    /** Of the least sure mate; 0 without mates. */
    double confidence(Ref r) {
        return byRef.getOrDefault(r, Map.of()).values().stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(0);
    }
}
