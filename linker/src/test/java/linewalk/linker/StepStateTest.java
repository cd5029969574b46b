package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.HandTag;
import linewalk.drawing.Position;
import linewalk.linker.step.StepState;
import org.junit.jupiter.api.Test;

/** Positions and pressure classes where the solved circuits do not reach: memory, motors, doubt, no rest. */
class StepStateTest {

    private static final String PUMP = """
            sheet 1
            part T1 tank D1 S R L
            part P1 pump C1 P S
            part V1 directional-valve B1 P T A B
            part A1 cylinder A1 A B
            line T1:S P1:S
            line P1:P V1:P
            line V1:T T1:R
            """;
    private static final String LINES = "line V1:A A1:A\nline V1:B A1:B\n";

    private static Map<String, Position> positions(Drawn drawn, String step) {
        return new Steps(drawn.link(), drawn.chart).get(step).positions();
    }

    /** The class of the line that ends at a port. */
    private static String at(Drawn drawn, String step, String port) {
        DrawingSet set = drawn.link();
        StepState state = new Steps(set, drawn.chart).get(step);
        return set.lines().stream()
                .filter(l -> l.ends().stream().anyMatch(e -> e.toString().contains(port)))
                .map(l -> state.classes().get(l.id()).word())
                .findFirst()
                .orElseThrow();
    }

    private static Drawn detented() {
        return Drawn.of(PUMP + LINES)
                .tag(new HandTag.OfPosition("V1", "Y1", "detent", "P-A B-T"))
                .tag(new HandTag.OfPosition("V1", "Y2", "detent", "P-B A-T"))
                .tag(new HandTag.OfPosition("V1", "rest", "detent", "P-A B-T"))
                .step("as built")
                .step("there", "Y2")
                .step("still there")
                .step("back", "Y1");
    }

    @Test
    void aDetentKeepsWhatTheStepBeforeLeft() {
        Drawn drawn = detented();
        assertThat(at(drawn, "as built", "V1.A")).isEqualTo("supply");
        assertThat(at(drawn, "there", "V1.A")).isEqualTo("return");
        assertThat(at(drawn, "still there", "V1.A")).isEqualTo("return");
        assertThat(at(drawn, "back", "V1.A")).isEqualTo("supply");
    }

    @Test
    void solenoidsAgainstEachOtherLeaveThePositionUnknown() {
        Drawn drawn = Drawn.of(PUMP + LINES)
                .tag(new HandTag.OfPosition("V1", "Y1", "solenoid", "P-A B-T"))
                .tag(new HandTag.OfPosition("V1", "Y2", "solenoid", "P-B A-T"))
                .tag(new HandTag.OfPosition("V1", "rest", "spring", ""))
                .step("both", "Y1", "Y2")
                .step("one", "Y1");
        assertThat(positions(drawn, "both")).isEmpty();
        assertThat(at(drawn, "both", "V1.A")).isEqualTo("unknown");
        assertThat(at(drawn, "both", "V1.P")).isEqualTo("supply");
        assertThat(at(drawn, "one", "V1.A")).isEqualTo("supply");
    }

    @Test
    void aPumpStopsWithItsMotor() {
        Drawn drawn = Drawn.of(PUMP + "part M1 electric-motor C2\n" + LINES);
        drawn.chart = new CycleChart(
                List.of("M1"),
                List.of(
                        new CycleChart.Step("1", "Power off", Set.of()),
                        new CycleChart.Step("2", "Running", Set.of("M1"))));
        assertThat(at(drawn, "Power off", "V1.P")).isEqualTo("idle");
        assertThat(at(drawn, "Running", "V1.P")).isEqualTo("supply");
        assertThat(at(drawn, "Power off", "P1.S")).isEqualTo("idle");
        assertThat(at(drawn, "Running", "P1.S")).isEqualTo("intake");
    }

    @Test
    void theChartOpensAShutOffValve() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part T1 tank D1 R
                part H1 shut-off-valve C1 A B set=closed
                part A1 cylinder A1 A
                line A1:A H1:A
                line H1:B T1:R
                """);
        CycleChart.Said open = new CycleChart.Said(Map.of(), Map.of("H1", true), Map.of(), Map.of(), Map.of());
        drawn.chart = new CycleChart(
                List.of(),
                List.of(
                        new CycleChart.Step("1", "Hold", Set.of()),
                        new CycleChart.Step("2", "Hand lowering", Set.of(), open)));
        assertThat(at(drawn, "Hold", "A1.A")).isEqualTo("held");
        assertThat(at(drawn, "Hand lowering", "A1.A")).isEqualTo("return");
    }

    /** A doubtful join may be none: what depends on it is unknown, what does not is not. */
    @Test
    void doubtIsNoClass() {
        Drawn drawn = Drawn.of(PUMP + "line p=0.6 V1:A A1:A\nline V1:B A1:B\n")
                .tag(new HandTag.OfPosition("V1", "rest", "spring", "P-A B-T"))
                .step("run");
        assertThat(at(drawn, "run", "V1.P")).isEqualTo("supply");
        assertThat(at(drawn, "run", "V1.A")).isEqualTo("unknown");
        assertThat(at(drawn, "run", "V1.B")).isEqualTo("unknown");
    }

    @Test
    void aLineThatLeadsOffToNowhereKnownIsNotIdle() {
        Drawn drawn = Drawn.of(PUMP + "line V1:A A1:A open@A3\nline V1:B A1:B\n")
                .tag(new HandTag.OfPosition("V1", "rest", "spring", "P-T A-T"))
                .step("run");
        assertThat(at(drawn, "run", "V1.A")).isEqualTo("unknown");
        assertThat(at(drawn, "run", "V1.B")).isEqualTo("held");
    }

    /** Oil over its rest position shifts it, and shifted it takes that oil away. */
    private static Drawn hunting() {
        return Drawn.of("""
                sheet 1
                part T1 tank D1 S R
                part P1 pump C1 P S
                part V1 directional-valve B1 P T A X
                line T1:S P1:S
                line P1:P V1:P
                line V1:T T1:R
                line pilot V1:A V1:X
                """)
                .tag(new HandTag.OfPosition("V1", "rest", "spring", "P-A"))
                .tag(new HandTag.OfPosition("V1", "X", "pilot", "A-T"))
                .step("run");
    }

    @Test
    void whatFindsNoRestIsAFindingAndUnknown() {
        Drawn drawn = hunting();
        assertThat(findings(drawn)).containsExactly("unsettled V1");
        assertThat(positions(drawn, "run")).isEmpty();
        assertThat(at(drawn, "run", "V1.A")).isEqualTo("unknown");
        assertThat(at(drawn, "run", "V1.P")).isEqualTo("supply");
    }

    private static List<String> findings(Drawn drawn) {
        return new Steps(drawn.link(), drawn.chart)
                .withFindings().findings().stream()
                        .filter(f -> f.rule() == linewalk.drawing.Rule.UNSETTLED)
                        .map(f -> f.rule().word() + " " + String.join(" ", f.components()))
                        .toList();
    }

    /** The main stage's pilots have no names: each moves the square beside it, in whichever order its lines come. */
    @Test
    void aPilotStageShiftsTheMainStageToTheSideOfItsLine() {
        Drawn drawn = Drawn.of(PUMP.replace("P T A B", "P T A B -b@40,0 -a@-40,0") + LINES + """
                part V2 directional-valve B3 P T A B
                line P1:P V2:P
                line V2:T T1:R
                line pilot V2:A V1:a
                line pilot V2:B V1:b
                pos V1 pilot P-A B-T
                pos V1 rest A-T B-T
                pos V1 pilot P-B A-T
                pos V2 Y1 P-A B-T
                pos V2 rest A-T B-T
                pos V2 Y2 P-B A-T
                """)
                .step("rest")
                .step("left", "Y1")
                .step("right", "Y2");
        assertThat(at(drawn, "rest", "V1.A")).isEqualTo("idle");
        assertThat(at(drawn, "left", "V1.A")).isEqualTo("supply");
        assertThat(at(drawn, "left", "V1.B")).isEqualTo("return");
        assertThat(at(drawn, "right", "V1.B")).isEqualTo("supply");
    }
}
