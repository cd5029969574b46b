package linewalk.tests.truth;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import linewalk.tests.Run;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every flow path of the demo, walked over the drawn sheets: the same parts and references in the same order. */
class PathTest {

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicContainer> walksAsTheTruthTells() {
        return DraftingStyle.ALL.stream().map(s -> DynamicContainer.dynamicContainer(s.name(), paths(s)));
    }

    /** Drawn with its tags, cycle chart and parts list, and imported. */
    private Stream<DynamicTest> paths(DraftingStyle style) {
        Path set = folder.resolve(style.name());
        try {
            DemoSet.write(set, style);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        fine("import", set.resolve("link-span.pdf"), "--into", set);
        Truth truth = new Truth(Sets.json(set.resolve("truth.json")));
        Map<String, String> knownIds =
                new ReferenceScore(truth, fine("export", set).json()).knownIdByReadId();
        List<JsonNode> paths = new ArrayList<>();
        truth.data().get("paths").forEach(paths::add);
        assertThat(paths).hasSizeGreaterThanOrEqualTo(10);
        return paths.stream().filter(p -> p.path("ask").asBoolean(true)).map(p -> {
            String name = p.get("state").asText() + ": " + p.get("from").asText() + " over " + p.get("ask_via");
            return DynamicTest.dynamicTest(
                    name, () -> assertThat(walk(trace(set, p), knownIds)).isEqualTo(wanted(p)));
        });
    }

    private static Run trace(Path set, JsonNode p) {
        List<String> via = Truth.texts(p.get("via"));
        List<Object> question = new ArrayList<>(List.of(
                "trace",
                set,
                "--from",
                p.get("from").asText(),
                "--to",
                via.get(via.size() - 1),
                "--step",
                p.get("state").asText(),
                "--format",
                "json"));
        Truth.texts(p.path("ask_via")).forEach(v -> question.addAll(List.of("--via", v)));
        Run run = linewalk(question.toArray());
        assertThat(run.status()).as(run.err()).isZero();
        return run;
    }

    private static List<String> walk(Run trace, Map<String, String> knownIds) {
        List<String> walk = new ArrayList<>();
        trace.json()
                .get("path")
                .forEach(x -> add(
                        walk,
                        x.has("reference")
                                ? knownIds.getOrDefault(x.get("reference").asText(), "?" + x.get("reference"))
                                : x.get("component").asText()));
        return walk;
    }

    private static List<String> wanted(JsonNode p) {
        List<String> walk = new ArrayList<>();
        Truth.texts(p.get("via")).forEach(v -> add(walk, v.replaceFirst(":.*", "")));
        return walk;
    }

    /** In and out of one part is one step. */
    private static void add(List<String> walk, String step) {
        if (walk.isEmpty() || !walk.get(walk.size() - 1).equals(step)) {
            walk.add(step);
        }
    }
}
