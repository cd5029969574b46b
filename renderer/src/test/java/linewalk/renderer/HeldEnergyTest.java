package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.linker.step.PressureClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Stored energy is warned of at the part itself, in both looks. */
class HeldEnergyTest {

    @TempDir
    Path folder;

    private final Cards cards = new Cards();

    private String picture(Look look, String name) {
        cards.bench.drawnTo(folder.resolve("bench.pdf"), 0).look = look;
        return Prints.text(Prints.print(Circuits.whole(cards.job()), "energy-" + name + "-" + look));
    }

    private void holding(String line) {
        cards.step(CycleChart.Said.NOTHING).solved(line, PressureClass.HELD);
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void oilThatHoldsALoadIsToldAtTheActuator(Look look) {
        holding("L-2");
        assertThat(picture(look, "held")).contains("HELD: BLOCK LOAD");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void anAccumulatorIsAlwaysTakenAsCharged(Look look) {
        Component accumulator = cards.bench.part(1, "0Z6", Kind.ACCUMULATOR, 400, 200, "P@400,225");
        cards.join("0P1:P", accumulator, "P");
        assertThat(picture(look, "stored")).contains("STORED PRESSURE");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void heldOilElsewhereIsNotToldAtAnActuatorThatItDoesNotReach(Look look) {
        holding("L-1");
        assertThat(picture(look, "elsewhere")).doesNotContain("BLOCK LOAD");
    }

    @ParameterizedTest
    @EnumSource(Look.class)
    void atRestAValveThatHoldsLoadsWarnsOfOne(Look look) {
        assertThat(picture(look, "free")).doesNotContain("MAY HOLD A LOAD");
        Component valve = cards.bench.part(3, "1V3", Kind.COUNTERBALANCE_VALVE, 600, 200, "C@600,225");
        cards.join("1A1:A", valve, "C");
        assertThat(picture(look, "rest")).contains("MAY HOLD A LOAD");
    }

    @Test
    void aBranchOfAPathSaysWhatIsStoredAtItsEnd() {
        Component accumulator = cards.bench.part(1, "0Z6", Kind.ACCUMULATOR, 400, 200, "P@400,225");
        cards.join("0P1:P", accumulator, "P");
        assertThat(Prints.text(Prints.print(cards.job(), "energy-branch")))
                .contains("accumulator 0Z6 P, sheet 1", "STORED PRESSURE");
    }

    @Test
    void aPathSaysItToo() {
        holding("L-2");
        cards.bench.drawnTo(folder.resolve("bench.pdf"), 0).look = Look.CUTTINGS;
        assertThat(Prints.text(Prints.print(cards.job(), "energy-path"))).contains("HELD: BLOCK LOAD");
    }

    @Test
    void aBrakeMayHoldALoadWhateverStandsAtIt() {
        cards.join("1A1:A", cards.bench.part(3, "4A1", Kind.BRAKE, 600, 200, "P@600,225"), "P");
        assertThat(caution("B-1")).isEmpty();
        assertThat(picture(Look.DRAWN, "brake")).contains("MAY HOLD A LOAD");
    }

    /** The accumulator and its line B-1 from the pump, with a part on the way to the other line, B-2. */
    private void accumulatorBehind(Kind kind, String setting) {
        Component between = cards.bench.part(1, "0V8", kind, 300, 200, "A@300,225", "B@300,175");
        if (setting != null) {
            between = cards.bench.set(between, setting);
        }
        cards.join("0P1:P", between, "A");
        cards.join("0V8:B", cards.bench.part(1, "0Z6", Kind.ACCUMULATOR, 400, 200, "P@400,225"), "P");
    }

    private Optional<String> caution(String label) {
        PrintJob job = cards.job();
        Line line = job.set().lines().stream()
                .filter(l -> label.equals(l.label()))
                .findFirst()
                .orElseThrow();
        return new HeldEnergy(job).caution(line);
    }

    @ParameterizedTest
    @EnumSource(names = {"FILTER", "HOSE", "SHUT_OFF_VALVE"})
    void aLineIsUnderPressureFromBehindAnOpenPart(Kind kind) {
        accumulatorBehind(kind, null);
        assertThat(caution("B-2")).contains("STORED PRESSURE");
        assertThat(caution("B-1")).contains("STORED PRESSURE");
    }

    @Test
    void notFromBehindACheck() {
        accumulatorBehind(Kind.CHECK_VALVE, null);
        assertThat(caution("B-2")).contains("STORED PRESSURE");
        assertThat(caution("B-1")).isEmpty();
    }

    @Test
    void notFromBehindAShutOffThatIsClosed() {
        accumulatorBehind(Kind.SHUT_OFF_VALVE, "NORMALLY CLOSED");
        assertThat(caution("B-2")).contains("STORED PRESSURE");
        assertThat(caution("B-1")).isEmpty();
    }

    @Test
    void aLineThatStandsOpenToTheTankHoldsNothing() {
        Component discharge = cards.bench.part(1, "0V9", Kind.SHUT_OFF_VALVE, 300, 200, "A@300,225", "B@300,175");
        cards.join("TANK:R", discharge, "A");
        cards.join("0V9:B", cards.bench.part(1, "0Z6", Kind.ACCUMULATOR, 400, 200, "P@400,225"), "P");
        assertThat(caution("B-1")).isEmpty();
        assertThat(caution("B-2")).contains("STORED PRESSURE");
    }

    @Test
    void anOrificeToTheTankMayBeBlocked() {
        Component bleed = cards.bench.part(1, "0V9", Kind.ORIFICE, 300, 200, "A@300,225", "B@300,175");
        cards.join("TANK:R", bleed, "A");
        cards.join("0V9:B", cards.bench.part(1, "0Z6", Kind.ACCUMULATOR, 400, 200, "P@400,225"), "P");
        assertThat(caution("B-2")).contains("STORED PRESSURE");
    }

    @Test
    void theCautionsNameAccumulatorsBehindValves() {
        accumulatorBehind(Kind.CHECK_VALVE, null);
        assertThat(Prints.text(Prints.print(cards.job(), "energy-named")))
                .contains("Discharge accumulators (0Z6: 1, B2), prove zero");
    }
}
