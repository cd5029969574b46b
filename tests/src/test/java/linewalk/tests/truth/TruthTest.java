package linewalk.tests.truth;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How much of each drawing is read and linked rightly, without any hand tag; what was reached once must stay. */
class TruthTest {

    static final List<DraftingStyle> STYLES = DraftingStyle.ALL;

    /** Each way of drawing lines once, each font thrice. */
    static final List<DraftingStyle> STROKE_LETTERED = Stream.of(
                    "iso-round", "asme-narrow", "house-narrow", "hops-round", "pieces-round", "bars-narrow")
            .map(DraftingStyle::named)
            .toList();

    /** Painted letters, with arrows among them and beside painted lines; letters of which some are text. */
    static final List<DraftingStyle> OTHERWISE_LETTERED = Stream.of("hops-outline", "bars-outline", "asme-part")
            .map(DraftingStyle::named)
            .toList();

    @TempDir
    Path folder;

    @ParameterizedTest
    @FieldSource({"STYLES", "STROKE_LETTERED", "OTHERWISE_LETTERED"})
    void demo(DraftingStyle style) throws IOException {
        Path drawn = folder.resolve("drawn");
        DemoSet.write(drawn, style);
        holds("demo-" + style.name(), drawn.resolve("link-span.pdf"), drawn.resolve("truth.json"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "baling-press",
                "block-splitter",
                "barge-crane",
                "cork-saw",
                "cutter-dredger",
                "flood-door",
                "harbour-lock",
                "hatch-cover",
                "ice-harvester",
                "loader-crane",
                "lock-gate",
                "log-stacker",
                "ore-hopper",
                "roof-truss-press",
                "scrap-press",
                "segment-erector",
                "drum-upender",
                "sheet-calender",
                "slipway"
            })
    void drawnWithoutSightOfTheImporter(String set) {
        holds(set, Sets.own(set).resolve("set.pdf"), Sets.own(set).resolve("truth.json"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cork-saw", "ice-harvester", "roof-truss-press"})
    void plottedWithoutSightOfTheImporter(String set) {
        holds(set + "-plot", Sets.own(set).resolve("plot.pdf"), Sets.own(set).resolve("truth.json"));
    }

    @ParameterizedTest
    @CsvSource({
        "set-d, set-d/set-d.pdf, set-d/truth.json",
        "psu-board, real/psu-board.pdf, real/psu-board.truth.json",
        "two-pids, real/two-pids.pdf, real/two-pids.truth.json",
        "processor-board-rot90, real/processor-board-rot90.pdf, real/processor-board-rot90.truth.json"
    })
    void keptBesideTheRepository(String set, String pdf, String truth) {
        assumeTrue(Sets.shared(pdf).isPresent(), "skipped: shared/drawings/" + pdf + " is not beside the repository");
        holds(set, Sets.shared(pdf).orElseThrow(), Sets.shared(truth).orElseThrow());
    }

    private void holds(String set, Path pdf, Path truth) {
        Path made = folder.resolve("set");
        fine("import", pdf, "--into", made);
        JsonNode export = fine("export", made).json();
        Map<String, Double> figures = Score.of(new Truth(Sets.json(truth)), export);
        Baselines baselines = Baselines.checkedIn();
        baselines.gains(set, figures).forEach(g -> System.out.println("the baseline may rise: " + g));
        assertThat(baselines.faults(set, figures)).isEmpty();
    }
}
