package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;

/** Components by designation and place, and the ports of those that were found. */
final class ComponentScore {

    private static final double COMPONENT_REACH_PT = 60;
    private static final double PORT_REACH_PT = 30;

    private static final Map<String, String> SAME_KIND = Map.of(
            "POCHECK", "PILOTCHECKVALVE",
            "POCHECKVALVE", "PILOTCHECKVALVE",
            "PRESSUREREDUCINGVALVE", "REDUCINGVALVE",
            "NEEDLEVALVE", "FLOWCONTROL",
            "BRAKECYLINDER", "BRAKE",
            "PRESSURESWITCH", "SWITCH",
            "LEVELGAUGE", "GAUGE",
            "PROPORTIONALVALVE", "DIRECTIONALVALVE");

    private final List<JsonNode> known;
    private final List<JsonNode> read;
    private final Map<Integer, Integer> match;

    ComponentScore(Truth truth, JsonNode export) {
        known = truth.on("components");
        read = truth.onCheckedPages(export.get("components"));
        match = OneToOne.match(known, read, ComponentScore::cost);
    }

    private static double cost(JsonNode k, JsonNode r) {
        double wayPt = Truth.distancePt(k.get("x").asDouble(), k.get("y").asDouble(), r.get("boxPt"));
        boolean same = k.get("page").asInt() == r.get("page").asInt() && tag(k).equals(tag(r));
        return same && wayPt <= COMPONENT_REACH_PT ? wayPt : OneToOne.NEVER;
    }

    private static String tag(JsonNode component) {
        return Truth.plain(component.get("tag").asText());
    }

    /** Truths of others use their own words for some kinds. */
    private static String kind(JsonNode component) {
        String word = Truth.plain(component.path("kind").asText());
        return SAME_KIND.getOrDefault(word, word);
    }

    void score(Map<String, Double> figures) {
        if (known.isEmpty()) {
            return;
        }
        figures.put("components.recall", Truth.ratio(match.size(), known.size()));
        figures.put("components.precision", Truth.ratio(match.size(), read.size()));
        long kinds = match.entrySet().stream()
                .filter(e -> kind(known.get(e.getKey())).equals(kind(read.get(e.getValue()))))
                .count();
        figures.put("components.kind", Truth.ratio(kinds, known.size()));
    }

    void scorePorts(Map<String, Double> figures) {
        long right = knownPorts().size();
        long wanted = known.stream().mapToLong(k -> k.path("ports").size()).sum();
        long have = read.stream().mapToLong(r -> r.get("ports").size()).sum();
        figures.put("ports.f1", Truth.f1(Truth.ratio(right, have), Truth.ratio(right, wanted)));
    }

    List<Told> told() {
        return IntStream.range(0, read.size())
                .mapToObj(j -> new Told(read.get(j).get("confidence").asDouble(), match.containsValue(j)))
                .toList();
    }

    List<Told> toldPorts() {
        Map<String, String> right = knownPorts();
        return match.values().stream()
                .flatMap(j -> StreamSupport.stream(read.get(j).get("ports").spliterator(), false))
                .map(p -> new Told(
                        p.get("confidence").asDouble(),
                        right.containsKey(p.get("id").asText())))
                .toList();
    }

    /** {@code TAG:PORT} of each read port's id, by the nearest place within the same component. */
    Map<String, String> knownPorts() {
        Map<String, String> out = new HashMap<>();
        match.forEach((i, j) -> {
            List<Map.Entry<String, JsonNode>> names =
                    new ArrayList<>(known.get(i).path("ports").properties());
            List<JsonNode> ports = new ArrayList<>();
            read.get(j).get("ports").forEach(ports::add);
            OneToOne.match(names, ports, ComponentScore::portCost)
                    .forEach((n, p) -> out.put(
                            ports.get(p).get("id").asText(),
                            tag(known.get(i)) + ":" + names.get(n).getKey()));
        });
        return out;
    }

    private static double portCost(Map.Entry<String, JsonNode> k, JsonNode r) {
        double wayPt = Math.hypot(
                k.getValue().get(0).asDouble() - r.get("xPt").asDouble(),
                k.getValue().get(1).asDouble() - r.get("yPt").asDouble());
        return wayPt <= PORT_REACH_PT ? wayPt : OneToOne.NEVER;
    }

    /** The designation of the component that has the port. */
    Map<String, String> tagByPort() {
        Map<String, String> out = new HashMap<>();
        read.forEach(c -> c.get("ports").forEach(p -> out.put(p.get("id").asText(), tag(c))));
        return out;
    }
}
