package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.Reference;
import linewalk.drawing.Rule;
import linewalk.drawing.SetSettings;
import linewalk.drawing.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mates and findings of drawings with truths, were their pages read without a fault. */
class TruthPairsTest {

    private static DrawingSet link(JsonNode truth) {
        return Linker.link(
                new TruthReadings(truth).readings(),
                List.of(),
                new SetSettings(List.of("set.pdf"), null, null),
                List.of(),
                CycleChart.NONE);
    }

    private static String plainId(String id) {
        return id.substring(id.indexOf(':') + 1);
    }

    private static Set<Set<String>> pairs(DrawingSet set, double atLeast) {
        Set<Set<String>> pairs = new HashSet<>();
        for (Reference r : set.references()) {
            if (r.mateConfidence() >= atLeast) {
                r.mates().forEach(m -> pairs.add(Set.of(plainId(r.id()), plainId(m))));
            }
        }
        return pairs;
    }

    private static Set<Set<String>> pairs(JsonNode list) {
        Set<Set<String>> pairs = new HashSet<>();
        list.forEach(p -> pairs.add(new HashSet<>(Truths.texts(p))));
        return pairs;
    }

    @ParameterizedTest
    @CsvSource({
        "set-d, truth.json",
        "real, two-pids.truth.json",
        "real, psu-board.truth.json",
        "real, processor-board-rot90.truth.json",
        "real, winder-image.truth.json"
    })
    void matesAreThoseOfTheTruth(String folder, String file) {
        JsonNode truth = Truths.read(Truths.folder(folder).resolve(file));
        DrawingSet set = link(truth);
        Set<Set<String>> want = pairs(truth.get("pairs"));
        Set<Set<String>> either = pairs(truth.path("one_way"));
        either.addAll(pairs(truth.path("terminal_pairs")));
        Set<Set<String>> got = pairs(set, 0);
        got.removeIf(p -> either.contains(p) && !want.contains(p));
        assertThat(got).as("mates").containsExactlyInAnyOrderElementsOf(want);
    }

    @Test
    void everyDefectOfTheStageLiftIsOneFindingAndNothingElseIs() {
        Path folder = Truths.folder("set-d");
        DrawingSet set = link(Truths.read(folder.resolve("truth.json")));
        Set<String> loud = set.findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .map(TruthPairsTest::said)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(loud)
                .containsExactlyInAnyOrder(
                        "nothing-there [r48]",
                        "no-such-sheet [r27]",
                        "nothing-there [r38]",
                        "next-zone [r40]",
                        "label-differs [r34, r57]",
                        "flow-clash [r17, r3]",
                        // the truth lists errors of references alone; its case drain of 0P1 does join the return
                        // before the return filter 0Z3
                        "drain-on-return []");
    }

    private static String said(Finding f) {
        return f.rule().word() + " "
                + f.references().stream().map(TruthPairsTest::plainId).sorted().toList();
    }

    @Test
    void theLooseEndThatAnswersAOneWayReferenceIsTheSameFinding() {
        DrawingSet set = link(Truths.read(Truths.folder("set-d").resolve("truth.json")));
        assertThat(set.findings()).noneMatch(f -> f.rule() == Rule.LOOSE_END);
        assertThat(set.findings()).anyMatch(f -> f.message().contains("ends loose there"));
    }
}
