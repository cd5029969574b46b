package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** What the job card wants locked out and shut. */
class CardIsolationTest {

    private final Cards cards = new Cards();

    private String isolation(String name) {
        return cards.between("Isolation points", "Stored energy", "card-isolation-" + name);
    }

    @Test
    void theMotorOfThePumpsNumberIsNamed() {
        cards.bench.part(1, "0M1", Kind.ELECTRIC_MOTOR, 100, 400);
        cards.bench.part(1, "0M2", Kind.ELECTRIC_MOTOR, 300, 400);
        cards.listed("0M1", "37 kW", null);
        assertThat(isolation("motor"))
                .contains("electric motor 0M1, 37 kW: by its number it drives pump 0P1")
                .contains("Check that it is the one")
                .doesNotContain("0M2");
    }

    @Test
    void aMotorOfAnotherNumberIsToBeFound() {
        cards.bench.part(1, "MOT-A", Kind.ELECTRIC_MOTOR, 100, 400);
        cards.bench.part(1, "MOT-B", Kind.ELECTRIC_MOTOR, 300, 400);
        assertThat(isolation("find"))
                .contains("Drive of pump 0P1: no electric motor has its number")
                .contains("Find which: MOT-A, MOT-B")
                .doesNotContain("by its number it drives");
    }

    @Test
    void anotherPumpThatIsJoinedIsLockedOutToo() {
        cards.bench.part(1, "0M2", Kind.ELECTRIC_MOTOR, 300, 400);
        Component second = cards.bench.part(1, "0P2", Kind.PUMP, 500, 200, "P@500,175");
        cards.join("0P1:P", second, "P");
        assertThat(isolation("second")).contains("0M2: by its number it drives pump 0P2, which is joined to this path");
    }

    @Test
    void shutOffValvesBesideThePathAreClosed() {
        Component valve = cards.bench.part(1, "0V8", Kind.SHUT_OFF_VALVE, 500, 200, "1@500,190", "2@500,210");
        cards.join("0P1:P", valve, "1");
        assertThat(isolation("beside"))
                .contains("shut off valve 0V8: beside this path, at 0P1")
                .contains("sheet 1, B3")
                .contains("only after the pump is locked out");
    }

    @Test
    void whatIsDrawnClosedIsOnlyChecked() {
        Component valve = cards.bench.part(2, "0V9", Kind.SHUT_OFF_VALVE, 500, 200, "1@500,190", "2@500,210");
        cards.join("1V1:P", valve, "1").listed("0V9", "NORMALLY CLOSED", null);
        assertThat(isolation("closed")).contains("Check that it is closed").doesNotContain("Close and hold it so");
    }

    @Test
    void aPathWithoutShutOffValvesIsToldSo() {
        assertThat(isolation("none"))
                .contains("No shut-off valve is drawn on the path between 0P1 and 1A1")
                .contains("No shut-off valve is drawn on the path between 1A1 and TANK");
    }

    @Test
    void solenoidsAreNamedWithThoseEnergisedNow() {
        cards.step(CycleChart.Said.NOTHING, "Y1A");
        assertThat(isolation("solenoids"))
                .contains("directional valve 1V1: solenoid Y1A (Y1A energised in this step)")
                .contains("No lock-out by itself");
    }

    @Test
    void aValveOfUnreadPositionsIsLookedAt() {
        Bench bench = new Bench();
        Component valve = bench.part(1, "3V1", Kind.DIRECTIONAL_VALVE, 400, 300, "P@390,325", "A@390,275");
        bench.through(valve, null, "A", null);
        bench.along(1, "L-9", Bench.at(390, 275), Bench.at(390, 100));
        PrintJob job = bench.job();
        PrintForm form = job.form();
        PrintJob carded = job.in(new PrintForm(form.paper(), form.turn(), form.look(), form.hidden(), true));
        assertThat(Prints.text(Prints.print(carded, "card-isolation-unread")))
                .contains("directional valve 3V1: what moves it was not read");
    }

    @Test
    void theRulesOfThePlantGoFirst() {
        assertThat(isolation("rules")).contains("The plant's lockout rules and its authorised people decide");
    }
}
