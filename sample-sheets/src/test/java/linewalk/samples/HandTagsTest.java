package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The tags say what a person would: positions of valves on paths, and three references put right. */
class HandTagsTest {
    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void valvesOnPathsAreTaggedAndNothingElse(Demo demo) {
        Set<String> onPaths = new TreeSet<>();
        demo.list("paths").forEach(path -> onPaths.addAll(Demo.textsOf(path.get("via"))));
        Set<String> wanted = new TreeSet<>();
        Set<String> ownJoins = Set.of("tank", "pump", "motor", "cylinder");
        for (JsonNode part : demo.list("components")) {
            String kind = part.get("kind").asText();
            boolean needs = part.get("ports").size() > 2 || kind.equals("directional-valve");
            if (onPaths.contains(part.get("tag").asText()) && needs && !ownJoins.contains(kind)) {
                wanted.add(part.get("tag").asText());
            }
        }
        Set<String> tagged = new TreeSet<>();
        positions(demo).forEach(tag -> tagged.add(tag.get("component").asText()));
        assertThat(tagged).isEqualTo(wanted);
    }

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void correctionsNameTheMatesZone(Demo demo) {
        List<JsonNode> corrections = Demo.listOf(demo.tags().get("tags")).stream()
                .filter(tag -> tag.get("tag").asText().equals("reference"))
                .toList();
        assertThat(corrections).hasSizeBetween(2, 3);
        for (JsonNode correction : corrections) {
            JsonNode seen = demo.list("references").stream()
                    .filter(reference -> reference.get("page").equals(correction.get("page"))
                            && reference.get("x").equals(correction.get("xPt"))
                            && reference.get("y").equals(correction.get("yPt")))
                    .findFirst()
                    .orElseThrow();
            JsonNode mate = mateOf(demo, seen.get("id").asText());
            assertThat(correction.get("saw")).isEqualTo(seen.get("text"));
            assertThat(correction.get("targets").asText())
                    .endsWith("/" + mate.get("zone").asText())
                    .isNotEqualTo(seen.get("to_sheet").asText() + "/"
                            + seen.get("to_zone").asText());
        }
    }

    private static List<JsonNode> positions(Demo demo) {
        return Demo.listOf(demo.tags().get("tags")).stream()
                .filter(tag -> tag.get("tag").asText().equals("position"))
                .toList();
    }

    private static JsonNode mateOf(Demo demo, String id) {
        for (JsonNode pair : demo.list("pairs")) {
            List<String> ids = Demo.textsOf(pair);
            if (ids.contains(id)) {
                return demo.reference(ids.get(1 - ids.indexOf(id)));
            }
        }
        throw new AssertionError("no mate of " + id);
    }
}
