package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Kind;
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
}
