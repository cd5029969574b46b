package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The tags say what a person would: three references put right. What valves do is on the drawings. */
class HandTagsTest {
    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void correctionsNameTheMatesZone(Demo demo) {
        List<JsonNode> corrections = Demo.listOf(demo.tags().get("tags"));
        assertThat(corrections).allMatch(tag -> tag.get("tag").asText().equals("reference"));
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
