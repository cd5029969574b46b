package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Kind;
import linewalk.linker.step.PressureClass;
import org.junit.jupiter.api.Test;

/** Which gauges to bring, for how much, and what they should show. */
class CardGaugesTest {

    private final Cards cards = new Cards();

    private Cards withPoint() {
        Component point = cards.bench.part(1, "MP1", Kind.TEST_POINT, 500, 100, "M@500,110");
        return cards.join("0P1:P", point, "M");
    }

    private Cards withRelief(String setting) {
        Component relief = cards.bench.part(1, "0V5", Kind.RELIEF_VALVE, 500, 300, "P@500,290", "T@500,310");
        return cards.join("0P1:P", relief, "P").listed("0V5", setting, null);
    }

    private static CycleChart.Said expected(double bar) {
        return new CycleChart.Said(Map.of(), Map.of(), Map.of(), Map.of(), Map.of("MP1", bar));
    }

    private String gauges(String name) {
        return cards.between("Gauges needed", "Expected and measured", "card-gauges-" + name);
    }

    private String measures(String name) {
        return cards.between("Expected and measured", "Parts in the order", "card-measures-" + name);
    }

    @Test
    void nothingKnownIsAskedFor() {
        withPoint();
        assertThat(gauges("unknown"))
                .contains("MP1 sheet 1, A3 not known not known: ask")
                .contains("no relief setting known")
                .doesNotContain("0 to");
    }

    @Test
    void theReliefSettingMakesTheRange() {
        withPoint();
        withRelief("230 bar");
        assertThat(gauges("relief")).contains("not known 0 to 400 bar 0V5, 230 bar");
    }

    @Test
    void poundsAreConvertedAndSaidSo() {
        withPoint();
        withRelief("1500 psi");
        assertThat(gauges("pounds")).contains("0 to 160 bar 0V5, 1500 psi = 103 bar");
    }

    @Test
    void anExpectedValueAboveTheReliefCounts() {
        withPoint();
        withRelief("100 bar").step(expected(200));
        assertThat(gauges("above")).contains("200 bar 0 to 400 bar");
    }

    @Test
    void anExpectedValueAloneIsTheLeast() {
        withPoint().step(expected(120));
        assertThat(gauges("alone")).contains("120 bar at least 0 to 160 bar: ask");
    }

    @Test
    void aReliefWithoutPressureLeavesADoubt() {
        withPoint();
        withRelief("set on site");
        assertThat(gauges("untold")).contains("not known: ask").contains("setting of 0V5 not known");
    }

    @Test
    void beyondTheLargestRangeIsAskedFor() {
        withPoint();
        withRelief("800 bar");
        assertThat(gauges("beyond")).contains("beyond 0 to 1000 bar: ask");
    }

    @Test
    void aPointAtAnActuatorMayMeetMore() {
        Component point = cards.bench.part(3, "MP3", Kind.TEST_POINT, 500, 100, "M@500,110");
        cards.join("1A1:A", point, "M");
        withRelief("230 bar");
        assertThat(gauges("actuator"))
                .contains("MP3 sheet 3, A3 not known at least 0 to 400 bar: ask")
                .contains("load or area ratio of 1A1 may raise it");
    }

    @Test
    void aPointOfThePartsListThatIsNotDrawnIsToldSo() {
        cards.listed("0P1", "71 cm3", "MP7");
        assertThat(gauges("listed")).contains("MP7").contains("named in the parts list, not drawn");
    }

    @Test
    void measuredValuesHaveAPlaceBesideTheExpected() {
        withPoint().listed("0P1", null, "MP1").step(expected(120));
        cards.solved("B-1", PressureClass.SUPPLY);
        assertThat(measures("row"))
                .contains("Test point Tests Oil there Expected Measured Unit OK")
                .contains("MP1 0P1 supply 120 bar bar")
                .contains("Step 3 Press down; energised: none");
    }
}
