package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import linewalk.drawing.Finding;
import linewalk.drawing.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Doubt is said in words, marked in place, and mentioned in the walk. */
class DoubtMarksTest {

    @TempDir
    Path folder;

    @Test
    void aFindingOnALineIsMarkedInBothLooks() {
        for (Look look : Look.values()) {
            Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), 0);
            bench.look = look;
            bench.doubts.add(new Finding(
                    Rule.DOUBTFUL_JOIN,
                    Bench.page(3),
                    Bench.at(380, 400),
                    List.of(),
                    List.of(),
                    "Two lines meet here without a dot.",
                    "follow the pipe"));
            String text = Prints.text(Prints.print(bench.job(), "doubt-" + look));
            assertThat(text)
                    .contains("?1 Two lines meet here without a dot. To settle it: follow the pipe (sheet 3, C2)");
            assertThat(text.split("\\?1", -1).length - 1)
                    .as("in the list, at the place, in the walk, in the legend")
                    .isGreaterThanOrEqualTo(4);
            assertThat(text).as("in the title block").contains("to TANK - 1 DOUBT");
            assertThat(text).doesNotContain("not marked in the picture");
        }
    }

    @Test
    void cuttingsOfACircuitMarkEachEndOfACrossingInDoubtAndSaySo() {
        Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), 0);
        bench.look = Look.CUTTINGS;
        bench.findings.add(finding(List.of("2.C1@1", "1.A4@2"), Bench.at(780, 100)));
        String text = Prints.text(Prints.print(Circuits.whole(bench.job()), "doubt-circuit"));
        assertThat(text).doesNotContain("not marked in the picture");
        assertThat(text.split("\\?1", -1).length - 1)
                .as("at both references, in the list, in the legend")
                .isEqualTo(4);
    }

    private static Finding finding(List<String> references, linewalk.drawing.Point place) {
        return new Finding(
                        Rule.DOUBTFUL_JOIN,
                        Bench.page(1),
                        place,
                        references,
                        List.of(),
                        "These two may not be mates.",
                        "follow the pipe")
                .weighed(linewalk.drawing.Severity.WARNING);
    }

    @Test
    void aMateThatIsNotSureIsADoubtEvenWithoutAFinding() {
        Bench bench = new Bench();
        bench.through(bench.part(1, "P1", linewalk.drawing.Kind.PUMP, 100, 100, "P@100,75"), null, "P", null);
        bench.along(1, null, Bench.at(100, 75), Bench.at(700, 75));
        bench.across(bench.reference(1, "2.A1", 720, 75, 0.7), bench.reference(2, "1.A4", 60, 75, 0.7));
        bench.along(2, null, Bench.at(80, 75), Bench.at(300, 75));
        bench.through(bench.part(2, "V1", linewalk.drawing.Kind.CHECK_VALVE, 300, 100, "A@300,75"), "A", null, null);
        assertThat(Prints.text(Prints.print(bench.job(), "doubt-mate")))
                .contains("?1 It is not sure that 2.A1 on sheet 1, A4 goes on at sheet 2, A1");
        assertThat(TracePrint.walk(bench.job()).get(0)).endsWith("(in doubt: ?1).");
    }

    @Test
    void noDoubtIsSaidTooButNotAsAPromise() {
        assertThat(Prints.text(Prints.print(new Bench().roundTrip().job(), "no-doubt")))
                .contains("None on this path. That does not prove the drawing right.");
    }
}
