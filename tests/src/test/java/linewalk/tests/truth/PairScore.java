package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Mates. One that is wrong and yet told as sure is a silent error, the worst there is. */
final class PairScore {

    static final double SURE = 0.9;

    private final Truth truth;
    private final ReferenceScore references;
    private final Map<String, String> knownIds;

    PairScore(Truth truth, ReferenceScore references) {
        this.truth = truth;
        this.references = references;
        this.knownIds = references.knownIdByReadId();
    }

    /** Pairs that the drawings hold, of references that are scored. */
    Set<Set<String>> wanted() {
        return pairs("pairs");
    }

    private Set<Set<String>> pairs(String name) {
        Set<Set<String>> out = new HashSet<>();
        Set<String> ids = references.knownIds();
        truth.data().path(name).forEach(p -> {
            Set<String> pair = new HashSet<>(Truth.texts(p));
            if (ids.containsAll(pair)) {
                out.add(pair);
            }
        });
        return out;
    }

    void score(Map<String, Double> figures) {
        Set<Set<String>> want = wanted();
        if (want.isEmpty()) {
            return;
        }
        Set<Set<String>> optional = pairs("one_way");
        optional.addAll(pairs("terminal_pairs"));
        Set<Set<String>> have = read(0);
        have.removeIf(p -> optional.contains(p) && !want.contains(p));
        Set<Set<String>> silent = read(SURE);
        silent.retainAll(have);
        silent.removeAll(want);
        figures.put("pairs.recall", Truth.ratio(Truth.common(want, have), want.size()));
        figures.put("pairs.precision", Truth.ratio(Truth.common(want, have), have.size()));
        figures.put("silent.mates", (double) silent.size());
    }

    /** Every pair of mates but those that count neither way. */
    List<Told> told() {
        Set<Set<String>> want = wanted();
        Set<Set<String>> optional = pairs("one_way");
        optional.addAll(pairs("terminal_pairs"));
        return confidences().entrySet().stream()
                .filter(e -> want.contains(e.getKey()) || !optional.contains(e.getKey()))
                .map(e -> new Told(e.getValue(), want.contains(e.getKey())))
                .toList();
    }

    private Set<Set<String>> read(double atLeast) {
        Map<Set<String>, Double> all = confidences();
        all.values().removeIf(c -> c < atLeast);
        return new HashSet<>(all.keySet());
    }

    private Map<Set<String>, Double> confidences() {
        Map<String, JsonNode> byId = new HashMap<>();
        List<JsonNode> all = references.read();
        all.forEach(r -> byId.put(r.get("id").asText(), r));
        Map<Set<String>, Double> out = new HashMap<>();
        for (JsonNode r : all) {
            for (String mate : Truth.texts(r.get("mates"))) {
                JsonNode other = byId.get(mate);
                if (other != null && other != r) {
                    out.put(Set.of(known(r.get("id").asText()), known(mate)), confidence(r, other));
                }
            }
        }
        return out;
    }

    private static double confidence(JsonNode a, JsonNode b) {
        return Math.min(
                a.get("mateConfidence").asDouble(), b.get("mateConfidence").asDouble());
    }

    private String known(String readId) {
        return knownIds.getOrDefault(readId, "?" + readId);
    }
}
