package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Names and zone grids of sheets. */
final class SheetScore {

    private SheetScore() {}

    static void score(Truth truth, JsonNode export, Map<String, Double> figures) {
        Map<Integer, JsonNode> read = new HashMap<>();
        export.get("sheets").forEach(s -> read.put(s.get("page").asInt(), s));
        List<JsonNode> sheets = truth.on("sheets");
        long named = sheets.stream().filter(s -> named(s, of(read, s))).count();
        figures.put("sheets.identified", Truth.ratio(named, sheets.size()));
        List<JsonNode> grids =
                sheets.stream().filter(s -> s.hasNonNull("zone_columns")).toList();
        long same = grids.stream()
                .filter(s -> sameGrid(s, of(read, s).path("zones")))
                .count();
        figures.put("sheets.zone_grids", Truth.ratio(same, grids.size()));
    }

    private static JsonNode of(Map<Integer, JsonNode> read, JsonNode sheet) {
        JsonNode found = read.get(sheet.get("page").asInt());
        if (found == null) {
            throw new AssertionError("page " + sheet.get("page") + " is not in the export");
        }
        return found;
    }

    private static boolean named(JsonNode known, JsonNode read) {
        return Truth.plain(read.get("sheet").asText())
                .equals(Truth.plain(known.get("sheet").asText()));
    }

    private static boolean sameGrid(JsonNode known, JsonNode zones) {
        return sameLabels(known.get("zone_columns"), zones.path("columns"))
                && sameLabels(known.get("zone_rows"), zones.path("rows"));
    }

    private static boolean sameLabels(JsonNode known, JsonNode read) {
        return Truth.texts(known, Truth::plain).equals(Truth.texts(read, Truth::plain));
    }
}
