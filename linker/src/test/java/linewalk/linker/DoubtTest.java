package linewalk.linker;

import static linewalk.linker.Drawn.from;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A trace never walks silently over what is not sure. */
class DoubtTest {

    private static Question crossing(String from) {
        return new Question(from, List.of(), null, null, false, true, 1);
    }

    private static final String DOUBTFUL_LINE = """
            sheet 1
            part P1 pump A1 P
            part F1 filter B1 A B
            part T1 tank C1 R
            line P1:P F1:A
            line p=0.6 F1:B T1:R
            """;

    @Test
    void aDoubtfulLineStopsTheTraceAndSaysWhere() {
        Answer.Stopped stopped = (Answer.Stopped) Drawn.of(DOUBTFUL_LINE).trace(from("P1"));
        assertThat(stopped.atDoubt()).isTrue();
        assertThat(stopped.why()).contains("sheet 1, B1", "60 %");
        assertThat(Drawn.walk(stopped.reached())).isEqualTo("P1 F1");
    }

    @Test
    void crossingTheDoubtGoesOnAndTellsIt() {
        Answer.Found found = (Answer.Found) Drawn.of(DOUBTFUL_LINE).trace(crossing("P1"));
        assertThat(Drawn.walk(found.traces().get(0))).isEqualTo("P1 F1 T1");
        assertThat(found.traces().get(0).doubts()).hasSize(1);
    }

    @Test
    void aDoubtfulMateStopsTheTrace() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                ref a B4 > 2/C1
                ref b B4+0,20 > 2/C1
                line P1:P a
                sheet 2
                ref c C1 > 1/B4
                ref d C1+0,20 > 1/B4
                part T1 tank D1 R
                line c d T1:R
                """);
        assertThat(drawn.walk(from("P1"))).contains("stopped", "is not sure");
        assertThat(((Answer.Found) drawn.trace(crossing("P1"))).traces().get(0).doubts())
                .hasSize(1);
    }

    /** The easier way is the one the oil takes; a longer way that happens to be sure is not the answer. */
    @Test
    void aSureWayOfMoreResistanceDoesNotReplaceADoubtfulOne() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part F1 filter B1 A B
                part V0 relief-valve B2 P T
                part T1 tank C1 R R2
                line P1:P F1:A V0:P
                line p=0.6 F1:B T1:R
                line V0:T T1:R2
                """);
        assertThat(drawn.walk(from("P1"))).startsWith("stopped: stops at a doubt");
    }

    @Test
    void aReliefValveIsNotTheOnlyWayWhileAReferenceHasNoMate() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part V0 relief-valve B2 P T
                part T1 tank C1 R
                ref a B4 > 2/C1
                line P1:P V0:P a
                line V0:T T1:R
                sheet 2
                """);
        Answer.Stopped stopped = (Answer.Stopped) drawn.trace(from("P1"));
        assertThat(stopped.why()).contains("'2/C1' on sheet 1, B4", "no mate", "relief valve");
        assertThat(drawn.trace(crossing("P1"))).isInstanceOf(Answer.Found.class);
    }

    @Test
    void aPumpWhoseSidesNothingTellsApartIsADoubt() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part P1 pump A1 -x -y
                part M1 motor B1 A B
                part T1 tank C1 R
                line P1:x M1:A
                line P1:y M1:B
                """);
        assertThat(drawn.walk(new Question("P1", List.of(), "M1", null, false, false, 1)))
                .contains("pressure side");
    }

    @Test
    void aValveOfTwoPortsWhosePositionsAreNotKnownMayBeShut() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part P1 pump A1 P
                part V1 directional-valve B1 P A
                part T1 tank C1 R
                line P1:P V1:P
                line V1:A T1:R
                """);
        assertThat(drawn.walk(from("P1"))).contains("stopped", "V1");
        assertThat(drawn.trace(crossing("P1"))).isInstanceOf(Answer.Found.class);
    }
}
