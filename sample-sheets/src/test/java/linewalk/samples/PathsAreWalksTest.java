package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every path goes from net to net through pairs and through passages that are open in its state. */
class PathsAreWalksTest {
    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void pathsAreWalks(Demo demo) {
        assertThat(demo.list("paths")).hasSizeGreaterThan(10);
        for (JsonNode path : demo.list("paths")) {
            new Walk(demo, path).check();
        }
    }

    private static final class Walk {
        private final Demo demo;
        private final JsonNode path;
        private final Map<String, String> kinds = new HashMap<>();
        private final Map<String, Set<String>> netEnds = new HashMap<>();
        private final Set<Set<String>> pairs = new HashSet<>();

        Walk(Demo demo, JsonNode path) {
            this.demo = demo;
            this.path = path;
            demo.list("components")
                    .forEach(part ->
                            kinds.put(part.get("tag").asText(), part.get("kind").asText()));
            demo.list("nets")
                    .forEach(net -> netEnds.put(net.get("id").asText(), new HashSet<>(Demo.textsOf(net.get("ends")))));
            demo.list("pairs").forEach(pair -> pairs.add(Set.copyOf(Demo.textsOf(pair))));
        }

        void check() {
            List<String> via = Demo.textsOf(path.get("via"));
            List<List<String>> nets = new ArrayList<>();
            for (int i = 1; i < via.size(); i++) {
                String from = via.get(i - 1);
                String to = via.get(i);
                boolean jump = !kinds.containsKey(from) && pairs.contains(Set.of(from, to));
                nets.add(jump ? List.of() : netsBetween(from, to));
            }
            for (int i = 1; i < via.size() - 1; i++) {
                if (kinds.containsKey(via.get(i))) {
                    checkPassage(via.get(i), nets.get(i - 1), nets.get(i));
                }
            }
            assertThat(via.get(0)).isEqualTo(path.get("from").asText());
            assertThat(via.get(via.size() - 1)).isEqualTo(path.get("to").asText());
        }

        private List<String> netsBetween(String from, String to) {
            List<String> out = netEnds.entrySet().stream()
                    .filter(net -> touches(net.getValue(), from) && touches(net.getValue(), to))
                    .map(Map.Entry::getKey)
                    .toList();
            assertThat(out).as(from + " to " + to + " in " + path).isNotEmpty();
            return out;
        }

        private boolean touches(Set<String> ends, String what) {
            return ends.contains(what) || ends.stream().anyMatch(end -> end.startsWith(what + ":"));
        }

        /** Two parts may share two lines: a working line and one that only brings a pilot. */
        private void checkPassage(String tag, List<String> netsIn, List<String> netsOut) {
            List<String> open = openIn(tag);
            boolean goes = portsOn(tag, netsIn).stream()
                    .anyMatch(in -> portsOn(tag, netsOut).stream().anyMatch(out -> open.contains(in + out)));
            assertThat(goes).as(tag + " " + open + " in " + path).isTrue();
        }

        private List<String> portsOn(String tag, List<String> nets) {
            return nets.stream()
                    .flatMap(net -> netEnds.get(net).stream())
                    .filter(end -> end.startsWith(tag + ":"))
                    .map(end -> end.substring(tag.length() + 1))
                    .toList();
        }

        private List<String> openIn(String tag) {
            return switch (kinds.get(tag)) {
                case "directional-valve" -> spool(tag);
                case "check-valve" -> List.of("AB");
                case "relief-valve" -> List.of("PT");
                case "reducing-valve" -> List.of("PA");
                case "counterbalance-valve" -> List.of("VC", "CV");
                default -> List.of("AB", "BA");
            };
        }

        private List<String> spool(String tag) {
            JsonNode state = demo.list("states").stream()
                    .filter(one -> one.get("name").equals(path.get("state")))
                    .findFirst()
                    .orElseThrow();
            return Demo.listOf(state.get("passages").get(tag)).stream()
                    .map(passage -> passage.get(0).asText() + passage.get(1).asText())
                    .toList();
        }
    }
}
