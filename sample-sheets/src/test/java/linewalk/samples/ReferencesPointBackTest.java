package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each reference names the zone of its mate's text, but for the errors listed as such. */
class ReferencesPointBackTest {
    private static final Set<String> WRONG_TARGET =
            Set.of("nothing-there", "no-such-sheet", "not-returned", "next-zone");

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void theSetIsLargeEnough(Demo demo) {
        assertThat(demo.list("sheets")).hasSizeBetween(12, 14);
        assertThat(demo.list("pairs")).hasSizeGreaterThanOrEqualTo(45);
    }

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void endsOfAPairPointAtEachOther(Demo demo) {
        Set<String> wrong = wrongOnPurpose(demo);
        Set<String> seenWrong = new TreeSet<>();
        for (JsonNode pair : demo.list("pairs")) {
            JsonNode a = demo.reference(pair.get(0).asText());
            JsonNode b = demo.reference(pair.get(1).asText());
            for (JsonNode[] way : List.of(new JsonNode[] {a, b}, new JsonNode[] {b, a})) {
                if (!pointsAt(demo, way[0], way[1])) {
                    seenWrong.add(way[0].get("id").asText());
                }
            }
        }
        assertThat(wrong).containsAll(seenWrong);
        assertThat(seenWrong).as("wrong with a mate").hasSize(3);
    }

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void errorsAreWhatTheyAreCalled(Demo demo) {
        for (JsonNode defect : demo.list("defects")) {
            JsonNode reference = demo.reference(defect.get("refs").get(0).asText());
            List<String> there = idsIn(
                    demo,
                    reference.get("to_sheet").asText(),
                    reference.get("to_zone").asText());
            switch (defect.get("kind").asText()) {
                case "nothing-there" -> assertThat(there).isEmpty();
                case "next-zone" -> assertThat(there).isEmpty();
                case "not-returned" ->
                    assertThat(there).isNotEmpty().noneMatch(id -> pointsAt(demo, demo.reference(id), reference));
                case "no-such-sheet" ->
                    assertThat(sheetNames(demo))
                            .doesNotContain(reference.get("to_sheet").asText());
                case "label-differs" ->
                    assertThat(values(demo, defect, "label")).hasSize(2);
                case "flow-clash" -> assertThat(values(demo, defect, "flow")).containsExactly("out");
                case "same-place" -> {
                    assertThat(values(demo, defect, "to_sheet")).hasSize(1);
                    assertThat(values(demo, defect, "to_zone")).hasSize(1);
                }
                default -> throw new AssertionError("unknown kind " + defect);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void otherFlowsAndLabelsOfAPairAgree(Demo demo) {
        Set<String> listed = demo.list("defects").stream()
                .flatMap(defect -> Demo.textsOf(defect.get("refs")).stream())
                .collect(Collectors.toSet());
        for (JsonNode pair : demo.list("pairs")) {
            JsonNode a = demo.reference(pair.get(0).asText());
            JsonNode b = demo.reference(pair.get(1).asText());
            if (!listed.contains(a.get("id").asText())
                    || !listed.contains(b.get("id").asText())) {
                assertThat(a.get("label")).isEqualTo(b.get("label"));
                assertThat(List.of(a.get("flow").asText(), b.get("flow").asText()))
                        .isIn(Set.of(
                                List.of("out", "in"),
                                List.of("in", "out"),
                                List.of("unknown", "unknown"),
                                List.of("out", "unknown"),
                                List.of("unknown", "in"),
                                List.of("in", "unknown"),
                                List.of("unknown", "out")));
            }
        }
    }

    private static Set<String> wrongOnPurpose(Demo demo) {
        Set<String> out = new HashSet<>();
        demo.list("defects").stream()
                .filter(defect -> WRONG_TARGET.contains(defect.get("kind").asText()))
                .forEach(defect -> out.addAll(Demo.textsOf(defect.get("refs"))));
        return out;
    }

    private static boolean pointsAt(Demo demo, JsonNode from, JsonNode to) {
        Map<String, JsonNode> pages = demo.list("sheets").stream()
                .collect(Collectors.toMap(sheet -> sheet.get("page").asText(), sheet -> sheet));
        String sheet = pages.get(to.get("page").asText()).get("sheet").asText();
        List<String> sheets = several(from.get("to_sheet"));
        List<String> zones = several(from.get("to_zone"));
        for (int i = 0; i < sheets.size(); i++) {
            boolean zoneFits = zones.get(i).equals("null")
                    || zones.get(i).equals(to.get("zone").asText());
            if (sheets.get(i).equals(sheet) && zoneFits) {
                return true;
            }
        }
        return false;
    }

    private static List<String> several(JsonNode node) {
        return node.isArray() ? Demo.textsOf(node) : List.of(node.asText());
    }

    private static List<String> idsIn(Demo demo, String sheet, String zone) {
        List<String> out = new ArrayList<>();
        for (JsonNode candidate : demo.list("sheets")) {
            if (candidate.get("sheet").asText().equals(sheet)) {
                demo.list("references").stream()
                        .filter(reference -> reference.get("page").asInt()
                                == candidate.get("page").asInt())
                        .filter(reference -> reference.get("zone").asText().equals(zone))
                        .forEach(reference -> out.add(reference.get("id").asText()));
            }
        }
        return out;
    }

    private static List<String> sheetNames(Demo demo) {
        return demo.list("sheets").stream()
                .map(sheet -> sheet.get("sheet").asText())
                .toList();
    }

    private static Set<String> values(Demo demo, JsonNode defect, String field) {
        return Demo.textsOf(defect.get("refs")).stream()
                .map(id -> demo.reference(id).get(field).asText())
                .collect(Collectors.toSet());
    }
}
