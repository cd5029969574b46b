package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Kind;
import linewalk.linker.step.PressureClass;
import org.junit.jupiter.api.Test;

/** What the job card lists as stored: after 29 CFR 1910.147(d)(5), and whatever nobody told. */
class CardEnergyTest {

    private final Cards cards = new Cards();

    private String energy(String name) {
        return cards.between("Stored energy", "Gauges needed", "card-energy-" + name);
    }

    private Component accumulatorBehindAValve() {
        Component valve = cards.bench.part(1, "0V8", Kind.SHUT_OFF_VALVE, 500, 200, "1@500,190", "2@500,210");
        Component accumulator = cards.bench.part(1, "0Z6", Kind.ACCUMULATOR, 600, 200, "P@600,225");
        cards.join("0P1:P", valve, "1").join("0V8:2", accumulator, "P").listed("0Z6", "32 L / 100 bar", null);
        return valve;
    }

    private static CycleChart.Said load(CycleChart.Load load) {
        return new CycleChart.Said(Map.of(), Map.of(), Map.of(), Map.of("1A1", load), Map.of());
    }

    @Test
    void anAccumulatorIsFoundThroughAValve() {
        accumulatorBehindAValve();
        assertThat(energy("accumulator"))
                .contains("accumulator 0Z6, as drawn or listed: 32 L / 100 bar")
                .contains("Valves at it: 0V8")
                .doesNotContain("taken as closed");
    }

    @Test
    void oneBehindAClosedValveIsListedAllTheSame() {
        accumulatorBehindAValve();
        cards.listed("0V8", "NORMALLY CLOSED", null);
        assertThat(energy("behind")).contains("only a valve taken as closed keeps it off this path");
    }

    @Test
    void theChartSaysWhetherAValveIsClosed() {
        accumulatorBehindAValve();
        cards.step(CycleChart.Said.NOTHING)
                .solved("L-1", PressureClass.SUPPLY)
                .open
                .put("0V8", false);
        assertThat(energy("chart")).contains("only a valve taken as closed");
    }

    @Test
    void withoutAWorkedOutStateEveryLineCounts() {
        assertThat(energy("unsolved"))
                .contains("All lines of this path: what the oil does in them at rest is not told")
                .contains("Treat every one as under pressure");
    }

    @Test
    void heldUnknownAndPressedLinesAreToldApart() {
        cards.step(CycleChart.Said.NOTHING)
                .solved("L-1", PressureClass.SUPPLY)
                .solved("L-2", PressureClass.HELD)
                .solved("L-3", PressureClass.UNKNOWN)
                .solved("L-4", PressureClass.RETURN);
        assertThat(energy("classes"))
                .contains("Held oil, shut in, in line L-2")
                .contains("Not known in this step, so treated as stored: line L-3")
                .contains("may stay so behind checks and shut valves: line L-1")
                .contains("cylinder 1A1: may hold a load; nothing tells whether it does; held oil stands at it")
                .doesNotContain("L-4");
    }

    @Test
    void aLoadOfTheChartIsTold() {
        cards.step(load(CycleChart.Load.RETRACT));
        assertThat(energy("load")).contains("cylinder 1A1: its load would retract it (cycle chart)");
    }

    @Test
    void noLoadIsNotTakenOnTrust() {
        cards.step(load(CycleChart.Load.NONE));
        assertThat(energy("no-load"))
                .contains("the cycle chart says no load in this step")
                .contains("Make sure of it at the machine");
    }

    @Test
    void brakesAndOtherActuatorsThatAreJoinedAreNamed() {
        Component brake = cards.bench.part(2, "4A1", Kind.BRAKE, 200, 200, "P@200,225");
        Component motor = cards.bench.part(2, "4M1", Kind.MOTOR, 600, 200, "A@590,225", "B@610,225");
        cards.join("1V1:A", brake, "P").join("1V1:A", motor, "A");
        assertThat(energy("joined"))
                .contains("brake 4A1, joined to this path: a spring may set it")
                .contains("Also joined to this path: 4M1");
    }

    @Test
    void whereZeroIsProvedIsNamed() {
        Component point = cards.bench.part(1, "MP1", Kind.TEST_POINT, 500, 100, "M@500,110");
        assertThat(energy("no-point")).contains("no test point is drawn on or beside this path");
        cards.join("0P1:P", point, "M");
        assertThat(energy("point")).contains("Zero pressure at MP1");
    }
}
