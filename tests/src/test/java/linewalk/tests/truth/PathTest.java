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
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import linewalk.tests.Run;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every flow path of the demo, walked over the drawn sheets: the same parts and references in the same order. */
class PathTest {

    @TempDir
    Path folder;

    static List<DraftingStyle> styles() {
        return DraftingStyle.ALL;
    }

    /** Drawn with its tags, cycle chart and parts list, and imported. A walk that is not found is a loss; a wrong one is told apart. */
    @ParameterizedTest
    @MethodSource("styles")
    void walksAsTheTruthTells(DraftingStyle style) throws IOException {
        Path set = folder.resolve(style.name());
        DemoSet.write(set, style);
        fine("import", set.resolve("link-span.pdf"), "--into", set);
        Truth truth = new Truth(Sets.json(set.resolve("truth.json")));
        Map<String, String> knownIds =
                new ReferenceScore(truth, fine("export", set).json()).knownIdByReadId();
        int asked = 0;
        int exact = 0;
        int wrong = 0;
        for (JsonNode p : truth.data().get("paths")) {
            if (p.path("ask").asBoolean(true)) {
                Run trace = trace(set, p);
                boolean found = trace.status() == 0;
                boolean same = found && walk(trace, knownIds).equals(wanted(p));
                asked++;
                exact += same ? 1 : 0;
                wrong += found && !same ? 1 : 0;
            }
        }
        assertThat(asked).isGreaterThanOrEqualTo(10);
        String name = "paths-" + style.name();
        Map<String, Double> figures = Map.of("paths.exact", (double) exact / asked, "silent.paths", (double) wrong);
        Baselines baselines = Baselines.checkedIn();
        baselines.gains(name, figures).forEach(g -> System.out.println("the baseline may rise: " + g));
        assertThat(baselines.faults(name, figures)).isEmpty();
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
        return linewalk(question.toArray());
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
