package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which ends one line joins: as pairs of ports and references ({@code lines}), and as pairs of components and
 * references ({@code joins}). A wrong pair on a line told as sure is a silent error.
 */
final class LineScore {

    private final Truth truth;
    private final List<JsonNode> read;
    private final Set<String> referenceIds;
    private final Map<String, String> knownReferences;
    private final Map<String, String> knownPorts;
    private final Map<String, String> tagByPort;

    LineScore(Truth truth, JsonNode export, ReferenceScore references, ComponentScore components) {
        this.truth = truth;
        this.read = truth.onCheckedPages(export.get("lines"));
        this.referenceIds = references.knownIds();
        this.knownReferences = references.knownIdByReadId();
        this.knownPorts = components.knownPorts();
        this.tagByPort = components.tagByPort();
    }

    void score(Map<String, Double> figures) {
        score("lines", true, figures);
        score("joins", false, figures);
        Set<String> silent = read(true, PairScore.SURE);
        silent.removeAll(known(true));
        figures.put("silent.joins", (double) silent.size());
    }

    private void score(String name, boolean ports, Map<String, Double> figures) {
        Set<String> want = known(ports);
        Set<String> have = read(ports, 0);
        double recall = Truth.ratio(Truth.common(want, have), want.size());
        double precision = Truth.ratio(Truth.common(want, have), have.size());
        figures.put(name + ".f1", Truth.f1(precision, recall));
    }

    /** The line of the net's page that shares most ends with it, or null. */
    JsonNode lineOf(JsonNode net) {
        Set<String> want = new HashSet<>();
        Truth.texts(net.get("ends")).forEach(e -> want.add(knownEnd(e, true)));
        JsonNode best = null;
        long most = 0;
        for (JsonNode line : read) {
            if (line.get("page").equals(net.get("page"))) {
                Set<String> have = new HashSet<>();
                line.get("ends").forEach(e -> have.add(e.has("open") ? "" : readEnd(e, true)));
                long shared = Truth.common(want, have);
                best = shared > most ? line : best;
                most = Math.max(shared, most);
            }
        }
        return best;
    }

    private Set<String> known(boolean ports) {
        Set<String> out = new HashSet<>();
        for (JsonNode net : truth.on("nets")) {
            List<String> ends = new ArrayList<>();
            for (String end : Truth.texts(net.get("ends"))) {
                if (!end.startsWith("open:")) {
                    ends.add(knownEnd(end, ports));
                }
            }
            addPairs(out, ends);
        }
        return out;
    }

    private String knownEnd(String end, boolean ports) {
        if (referenceIds.contains(end)) {
            return "reference " + end;
        }
        int colon = end.indexOf(':');
        String tag = Truth.plain(colon < 0 ? end : end.substring(0, colon));
        return ports ? "port " + tag + ":" + end.substring(colon + 1) : "part " + tag;
    }

    private Set<String> read(boolean ports, double atLeast) {
        Set<String> out = new HashSet<>();
        for (JsonNode line : read) {
            if (line.get("confidence").asDouble() >= atLeast) {
                addPairs(out, readEnds(line, ports));
            }
        }
        return out;
    }

    private List<String> readEnds(JsonNode line, boolean ports) {
        List<String> ends = new ArrayList<>();
        line.get("ends").forEach(e -> {
            if (!e.has("open")) {
                ends.add(readEnd(e, ports));
            }
        });
        return ends;
    }

    private String readEnd(JsonNode end, boolean ports) {
        if (end.has("reference")) {
            String id = end.get("reference").asText();
            return "reference " + knownReferences.getOrDefault(id, "?" + id);
        }
        String id = end.get("port").asText();
        String tag = tagByPort.getOrDefault(id, "?");
        String port = knownPorts.getOrDefault(id, tag + ":?" + id);
        return ports ? "port " + port : "part " + port.substring(0, port.indexOf(':'));
    }

    /** Every pair of ends that a line joins. */
    List<Told> told() {
        Set<String> want = known(true);
        List<Told> out = new ArrayList<>();
        for (JsonNode line : read) {
            Set<String> pairs = new HashSet<>();
            addPairs(pairs, readEnds(line, true));
            pairs.forEach(p -> out.add(new Told(line.get("confidence").asDouble(), want.contains(p))));
        }
        return out;
    }

    private static void addPairs(Set<String> to, List<String> ends) {
        List<String> sorted = List.copyOf(new TreeSet<>(ends));
        for (int i = 0; i < sorted.size(); i++) {
            for (int j = i + 1; j < sorted.size(); j++) {
                to.add(sorted.get(i) + " - " + sorted.get(j));
            }
        }
    }
}
