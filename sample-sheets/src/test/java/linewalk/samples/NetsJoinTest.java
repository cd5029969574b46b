package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lines end at ports and references that are there, each of which belongs to one line. */
class NetsJoinTest {
    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void everyPortAndReferenceBelongsToOneNet(Demo demo) {
        List<String> wanted = new ArrayList<>();
        demo.list("references")
                .forEach(reference -> wanted.add(reference.get("id").asText()));
        for (JsonNode component : demo.list("components")) {
            component
                    .get("ports")
                    .fieldNames()
                    .forEachRemaining(port -> wanted.add(component.get("tag").asText() + ":" + port));
        }
        List<String> ends = new ArrayList<>();
        demo.list("nets").forEach(net -> ends.addAll(Demo.textsOf(net.get("ends"))));
        assertThat(ends).containsExactlyInAnyOrderElementsOf(wanted);
    }

    /** Classes are written net by net; what a pair joins must not be told two ways. */
    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void pressureClassesAgreeAcrossPairs(Demo demo) {
        Map<String, String> netOf = new HashMap<>();
        for (JsonNode net : demo.list("nets")) {
            Demo.textsOf(net.get("ends"))
                    .forEach(end -> netOf.put(end, net.get("id").asText()));
        }
        int compared = 0;
        for (JsonNode state : demo.list("states")) {
            for (JsonNode pair : demo.list("pairs")) {
                JsonNode a = state.get("classes").get(netOf.get(pair.get(0).asText()));
                JsonNode b = state.get("classes").get(netOf.get(pair.get(1).asText()));
                boolean pilotOffMain = pair.get(0).asText().startsWith("r4.") && "pilot".equals(text(b));
                if (a != null && b != null && !pilotOffMain) {
                    assertThat(a).as(pair + " in " + state.get("name")).isEqualTo(b);
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    private static String text(JsonNode node) {
        return node == null ? null : node.asText();
    }
}
