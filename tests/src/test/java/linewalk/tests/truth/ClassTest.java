package linewalk.tests.truth;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pressure class of every line of the demo in every step. Unknown is a loss; another class is told apart. */
class ClassTest {

    @TempDir
    Path folder;

    static List<DraftingStyle> styles() {
        return DraftingStyle.ALL;
    }

    @ParameterizedTest
    @MethodSource("styles")
    void asTheTruthTells(DraftingStyle style) throws IOException {
        Path set = folder.resolve(style.name());
        DemoSet.write(set, style);
        fine("import", set.resolve("link-span.pdf"), "--into", set);
        JsonNode export = fine("export", set).json();
        Truth truth = new Truth(Sets.json(set.resolve("truth.json")));
        ReferenceScore references = new ReferenceScore(truth, export);
        LineScore lines = new LineScore(truth, export, references, new ComponentScore(truth, export));
        int asked = 0;
        int right = 0;
        int wrong = 0;
        for (JsonNode step : truth.data().get("states")) {
            JsonNode said = export.get("classes").get(step.get("name").asText());
            for (JsonNode net : truth.on("nets")) {
                JsonNode want = step.get("classes").get(net.get("id").asText());
                JsonNode line = want == null ? null : lines.lineOf(net);
                String have =
                        line == null ? "" : said.get(line.get("id").asText()).asText();
                boolean same = want != null && have.equals(want.asText());
                asked += want == null ? 0 : 1;
                right += same ? 1 : 0;
                wrong += want == null || same || have.equals("unknown") || have.isEmpty() ? 0 : 1;
            }
        }
        assertThat(asked).isGreaterThan(300);
        String name = "classes-" + style.name();
        Map<String, Double> figures = Map.of("classes.right", (double) right / asked, "silent.classes", (double) wrong);
        Baselines baselines = Baselines.checkedIn();
        baselines.gains(name, figures).forEach(g -> System.out.println("the baseline may rise: " + g));
        assertThat(baselines.faults(name, figures)).isEmpty();
    }
}
