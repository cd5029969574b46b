package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** References, paired with those known by place and targets; read ones that are none known keep their id with a {@code ?}. */
final class ReferenceScore {

    private static final double REACH_PT = 15;
    /** Dearer than any way: wrong targets are taken only where no reference with the right ones stands. */
    private static final double WRONG_TARGETS = 1_000_000;

    private final List<JsonNode> known;
    private final List<JsonNode> read;
    private final Map<Integer, Integer> match;

    ReferenceScore(Truth truth, JsonNode export) {
        known = truth.on("references");
        read = truth.onCheckedPages(export.get("references"));
        match = OneToOne.match(known, read, ReferenceScore::cost);
    }

    private static double cost(JsonNode k, JsonNode r) {
        double x = k.get("x").asDouble();
        double y = k.get("y").asDouble();
        double wayPt = Truth.distancePt(x, y, r.get("boxPt"));
        if (k.get("page").asInt() != r.get("page").asInt() || wayPt > REACH_PT) {
            return OneToOne.NEVER;
        }
        // the way between the places decides among those whose boxes both hold the known place
        double placesPt = Math.abs(x - r.get("xPt").asDouble())
                + Math.abs(y - r.get("yPt").asDouble());
        return (sameTargets(k, r) ? 0 : WRONG_TARGETS) + wayPt + placesPt * 1e-6;
    }

    private static boolean sameTargets(JsonNode k, JsonNode r) {
        List<String> sheets = Truth.texts(k.get("to_sheet"), Truth::plain);
        List<String> zones = Truth.texts(k.path("to_zone"), Truth::zone);
        Set<String> want = new HashSet<>();
        for (int i = 0; i < sheets.size(); i++) {
            want.add(zones.isEmpty() ? sheets.get(i) : sheets.get(i) + "/" + zones.get(Math.min(i, zones.size() - 1)));
        }
        Set<String> have = new HashSet<>();
        for (JsonNode t : r.get("targets")) {
            String sheet = Truth.plain(t.get("sheet").asText());
            have.add(
                    zones.isEmpty()
                            ? sheet
                            : sheet + "/" + Truth.zone(t.path("zone").asText("")));
        }
        return want.equals(have);
    }

    void score(Map<String, Double> figures) {
        Set<Integer> apart = new HashSet<>();
        for (int i = 0; i < known.size(); i++) {
            if (known.get(i).path("kind").asText().equals("device-terminal")) {
                apart.add(i); // counts neither way
            }
        }
        long apartRead = apart.stream().filter(match::containsKey).count();
        int wanted = known.size() - apart.size();
        long found = match.size() - apartRead;
        long right = match.entrySet().stream()
                .filter(e -> !apart.contains(e.getKey()))
                .filter(e -> sameTargets(known.get(e.getKey()), read.get(e.getValue())))
                .count();
        figures.put("references.found", Truth.ratio(found, wanted));
        figures.put("references.recall", Truth.ratio(right, wanted));
        figures.put("references.precision", Truth.ratio(right, read.size() - apartRead));
    }

    /** Ids of all references known. */
    Set<String> knownIds() {
        Set<String> ids = new HashSet<>();
        known.forEach(k -> ids.add(k.get("id").asText()));
        return ids;
    }

    /** The known id of each read id, where it has one. */
    Map<String, String> knownIdByReadId() {
        Map<String, String> ids = new HashMap<>();
        match.forEach((i, j) ->
                ids.put(read.get(j).get("id").asText(), known.get(i).get("id").asText()));
        return ids;
    }

    List<JsonNode> read() {
        return new ArrayList<>(read);
    }
}
