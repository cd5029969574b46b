package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What each directional valve joins in each state of the truth, as pairs of port names. */
final class PassageScore {

    private static final Set<String> SCORED = Set.of("DIRECTIONALVALVE", "PROPORTIONALVALVE");

    private final Truth truth;
    private final ComponentScore components;
    private final Map<String, JsonNode> positions = new HashMap<>();

    PassageScore(Truth truth, JsonNode export, ComponentScore components) {
        this.truth = truth;
        this.components = components;
        truth.onCheckedPages(export.get("components"))
                .forEach(c -> positions.putIfAbsent(Truth.plain(c.get("tag").asText()), c.get("positions")));
    }

    void score(Map<String, Double> figures) {
        Set<String> scored = new HashSet<>();
        truth.on("components").stream()
                .filter(c -> SCORED.contains(Truth.plain(c.get("kind").asText())))
                .forEach(c -> scored.add(Truth.plain(c.get("tag").asText())));
        long total = 0;
        long right = 0;
        for (JsonNode state : truth.data().path("states")) {
            Set<String> on = new HashSet<>(Truth.texts(state.get("energised"), Truth::plain));
            for (Map.Entry<String, JsonNode> want : state.path("passages").properties()) {
                if (scored.contains(Truth.plain(want.getKey()))) {
                    total++;
                    right += read(Truth.plain(want.getKey()), on).equals(known(want.getValue())) ? 1 : 0;
                }
            }
        }
        if (total > 0) {
            figures.put("passages.right", Truth.ratio(right, total));
        }
    }

    private static Set<Set<String>> known(JsonNode pairs) {
        Set<Set<String>> out = new HashSet<>();
        pairs.forEach(p -> out.add(new HashSet<>(Truth.texts(p))));
        return out;
    }

    /** In the position with most energised solenoids, else at rest. */
    private Set<Set<String>> read(String tag, Set<String> on) {
        JsonNode best = null;
        long most = -1;
        for (JsonNode p : positions.getOrDefault(tag, truth.data().path("none"))) {
            boolean rest = p.get("by").asText().equals("rest");
            long count = rest ? 0 : Truth.common(Truth.texts(p.get("by"), Truth::plain), on);
            if (count > most && (rest || count > 0)) {
                best = p;
                most = count;
            }
        }
        Set<Set<String>> out = new HashSet<>();
        if (best == null) {
            out.add(Set.of("not read"));
            return out;
        }
        Map<String, String> ports = components.knownPorts();
        best.get("passages").forEach(x -> {
            Set<String> pair = new HashSet<>();
            for (String end : new String[] {"from", "to"}) {
                String id = x.get(end).asText();
                String port = ports.getOrDefault(id, ":?" + id);
                pair.add(port.substring(port.indexOf(':') + 1));
            }
            out.add(pair);
        });
        return out;
    }
}
