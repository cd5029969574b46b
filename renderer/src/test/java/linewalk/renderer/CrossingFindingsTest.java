package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Finding;
import linewalk.drawing.Rule;
import org.junit.jupiter.api.Test;

/** Where the two ends of a crossing on the path do not agree, the print says so even if the mate is held for sure. */
class CrossingFindingsTest {

    private static Finding finding(Rule rule, String reference) {
        return new Finding(
                rule, Bench.page(1), Bench.at(780, 100), List.of(reference), List.of(), "The ends differ.", null);
    }

    @Test
    void aFindingAtACrossingOfThePathIsADoubt() {
        Bench bench = new Bench().roundTrip();
        bench.findings.add(finding(Rule.LABEL_DIFFERS, "2.C1@1"));
        assertThat(Prints.text(Prints.print(bench.job(), "crossing-finding")))
                .contains("?1 The ends differ. (sheet 1, A4)")
                .contains("to TANK - 1 DOUBT");
        assertThat(TracePrint.walk(bench.job()).get(0)).endsWith("(in doubt: ?1).");
    }

    @Test
    void findingsElsewhereAndNotesAreLeftToTheCheck() {
        Bench bench = new Bench().roundTrip();
        bench.findings.add(finding(Rule.LABEL_DIFFERS, "elsewhere"));
        bench.findings.add(finding(Rule.RETURNS_TO_START, "2.C1@1"));
        assertThat(Doubts.of(bench.job()).all()).isEmpty();
    }

    @Test
    void aDoubtOfTheTraceIsNotSaidTwice() {
        Bench bench = new Bench().roundTrip();
        bench.findings.add(finding(Rule.NEXT_ZONE, "2.C1@1"));
        bench.doubts.add(finding(Rule.NEXT_ZONE, "2.C1@1"));
        assertThat(Doubts.of(bench.job()).all()).hasSize(1);
    }
}
