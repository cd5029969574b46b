package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Drafting errors told, and told by their rule; and errors told where there is none. */
final class DefectScore {

    /** A finding about more references than this points at nothing. */
    private static final int FEW = 8;

    /** Other words of truths for our rules. */
    private static final Map<String, Set<String>> RULES = Map.ofEntries(
            Map.entry("empty-zone", Set.of("nothing-there")),
            Map.entry("zone-empty", Set.of("nothing-there")),
            Map.entry("missing-sheet", Set.of("no-such-sheet")),
            Map.entry("sheet-missing", Set.of("no-such-sheet")),
            Map.entry("one-way", Set.of("not-returned", "nothing-there")),
            Map.entry("off-by-one-zone", Set.of("next-zone")),
            Map.entry("off-by-one", Set.of("next-zone")),
            Map.entry("ambiguous-zone", Set.of("same-place")),
            Map.entry("duplicate-zone", Set.of("same-place")),
            Map.entry("duplicate-in-zone", Set.of("same-place")),
            Map.entry("label-mismatch", Set.of("label-differs")),
            Map.entry("labels-disagree", Set.of("label-differs")),
            Map.entry("label-disagreement", Set.of("label-differs")),
            Map.entry("flow-contradiction", Set.of("flow-clash")),
            Map.entry("both-out", Set.of("flow-clash")),
            Map.entry("loop", Set.of("returns-to-start")));

    /** A finding's rule and the known references that it names. */
    private record Told(String rule, boolean loud, Set<String> references) {}

    private final List<JsonNode> defects = new ArrayList<>();
    private final List<Told> told = new ArrayList<>();
    private final Set<Set<String>> pairs;

    DefectScore(Truth truth, JsonNode export, ReferenceScore references, PairScore pairs) {
        truth.data().path("defects").forEach(defects::add);
        Map<String, String> knownIds = references.knownIdByReadId();
        export.get("findings").forEach(f -> {
            List<String> ids = Truth.texts(f.get("references"));
            boolean loud = !f.get("severity").asText().equals("note");
            told.add(new Told(f.get("rule").asText(), loud, known(ids, knownIds)));
        });
        this.pairs = pairs.wanted();
    }

    private static Set<String> known(List<String> ids, Map<String, String> knownIds) {
        return ids.stream().map(knownIds::get).filter(Objects::nonNull).collect(Collectors.toSet());
    }

    void score(Map<String, Double> figures) {
        if (defects.isEmpty()) {
            return;
        }
        long reported = defects.stream().filter(d -> !hits(d).isEmpty()).count();
        long named = defects.stream()
                .filter(d -> hits(d).stream().anyMatch(t -> rules(d).contains(t.rule())))
                .count();
        figures.put("defects.reported", Truth.ratio(reported, defects.size()));
        figures.put("defects.rule", Truth.ratio(named, defects.size()));
        figures.put("defects.false_alarms", (double) falseAlarms());
    }

    private static Set<String> rules(JsonNode defect) {
        String kind = defect.get("kind").asText();
        return RULES.getOrDefault(kind, Set.of(kind));
    }

    /** A note is enough for a line that returns to its start; everything else must be told aloud. */
    private List<Told> hits(JsonNode defect) {
        List<String> refs = Truth.texts(defect.get("refs"));
        List<Told> hits = told.stream()
                .filter(t -> t.loud() && t.references().size() <= FEW && Truth.common(refs, t.references()) > 0)
                .toList();
        return hits.isEmpty() && rules(defect).contains("returns-to-start")
                ? told.stream().filter(t -> t.rule().equals("returns-to-start")).toList()
                : hits;
    }

    private long falseAlarms() {
        Set<String> near = new HashSet<>();
        defects.forEach(d -> near.addAll(Truth.texts(d.get("refs"))));
        Set<String> named = Set.copyOf(near);
        pairs.stream().filter(p -> Truth.common(p, named) > 0).forEach(near::addAll);
        return told.stream()
                .filter(Told::loud)
                .filter(t -> t.references().size() > FEW
                        || (!t.references().isEmpty() && Truth.common(t.references(), near) == 0))
                .count();
    }
}
