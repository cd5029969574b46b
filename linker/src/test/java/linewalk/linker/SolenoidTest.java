package linewalk.linker;

import static linewalk.linker.Drawn.findings;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.CycleChart;
import org.junit.jupiter.api.Test;

/** The cycle chart and the valves must speak of the same solenoids. */
class SolenoidTest {

    private static final String VALVE = """
            sheet 1
            part V1 directional-valve A1 P A
            pos V1 rest
            pos V1 Y1 P-A
            """;

    @Test
    void oneThatIsInTheChartOnly() {
        assertThat(findings(Drawn.of(VALVE).step("run", "Y1", "Y2").link())).containsExactly("unknown-solenoid");
    }

    /** Which column means it is not known, and so in no step where the valve stands. */
    @Test
    void oneWithoutAName() {
        Drawn drawn = Drawn.of("""
                        sheet 1
                        part P1 pump B1 P
                        part V1 directional-valve A1 P A
                        part T1 tank C1 R
                        pos V1 rest P-A
                        pos V1 solenoid
                        line P1:P V1:P
                        line V1:A T1:R
                        """).step("run", "Y1");
        Answer answer = drawn.trace(new Question("P1", List.of(), "T1", "run", false, true, 1));

        assertThat(((Answer.Found) answer).traces().get(0).doubts())
                .singleElement()
                .satisfies(f -> assertThat(f.message()).startsWith("That V1 stands"));
    }

    @Test
    void oneThatIsOnTheDrawingOnly() {
        assertThat(findings(
                        Drawn.of(VALVE + "pos V1 Y3 P-A\n").step("run", "Y1").link()))
                .containsExactly("unused-solenoid");
    }

    @Test
    void silentWithoutAChartOrWithoutKnownPositions() {
        assertThat(findings(Drawn.of(VALVE).link())).isEmpty();
        assertThat(findings(Drawn.of("sheet 1").step("run", "Y1").link())).isEmpty();
    }

    @Test
    void aColumnMayNameAPartOrALever() {
        Drawn drawn = Drawn.of(VALVE + "part P1 pump A2 P\n").step("run", "Y1", "P1");
        assertThat(findings(drawn.link())).isEmpty();
    }

    @Test
    void aPositionThatTheValveDoesNotHave() {
        Drawn drawn = Drawn.of(VALVE);
        drawn.chart = new CycleChart(
                List.of("Y1"),
                List.of(new CycleChart.Step(
                        "1",
                        null,
                        Set.of(),
                        new CycleChart.Said(Map.of("V1", "c"), Map.of(), Map.of(), Map.of(), Map.of()))));
        assertThat(findings(drawn.link())).containsExactly("unknown-solenoid");
    }
}
