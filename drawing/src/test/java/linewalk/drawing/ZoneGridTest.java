package linewalk.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields of a border grid, whichever way its labels run. */
class ZoneGridTest {

    /** Numbers left to right, letters downwards, as ISO 5457 has it; fields of 100 x 50 pt from (10, 20). */
    private static final ZoneGrid ISO = new ZoneGrid(
            List.of(
                    new ZoneGrid.Band("01", 10, 110),
                    new ZoneGrid.Band("02", 110, 210),
                    new ZoneGrid.Band("03", 210, 310)),
            List.of(new ZoneGrid.Band("A", 20, 70), new ZoneGrid.Band("B", 70, 120)),
            true);

    /** Numbers right to left, letters upwards, as ASME Y14.1 has it (from memory). */
    private static final ZoneGrid ASME = new ZoneGrid(
            List.of(new ZoneGrid.Band("2", 0, 100), new ZoneGrid.Band("1", 100, 200)),
            List.of(new ZoneGrid.Band("B", 0, 100), new ZoneGrid.Band("A", 100, 200)),
            true);

    private static Zone zone(String text) {
        return Zone.parse(text).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"11, 21, A1", "109, 119, B1", "150, 60, A2", "300, 100, B3"})
    void aPlaceIsInItsField(double xPt, double yPt, String zone) {
        assertThat(ISO.zoneAt(new Point(xPt, yPt))).contains(zone(zone));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, A1", "400, 60, A3", "150, 500, B2"})
    void aPlaceBesideTheGridCountsToTheNearestField(double xPt, double yPt, String zone) {
        assertThat(ISO.zoneAt(new Point(xPt, yPt))).contains(zone(zone));
    }

    @Test
    void labelsAreReadFromTheSheetWhicheverWayTheyRun() {
        assertThat(ASME.zoneAt(new Point(150, 150))).contains(zone("A1"));
        assertThat(ASME.zoneAt(new Point(10, 10))).contains(zone("B2"));
    }

    @Test
    void aFieldHasItsBox() {
        assertThat(ISO.box(zone("B2"))).contains(new Box(110, 70, 210, 120));
        assertThat(ISO.box(zone("2B"))).isEqualTo(ISO.box(zone("B02")));
        assertThat(ISO.box(zone("C2"))).isEmpty();
        assertThat(ISO.has(zone("A3"))).isTrue();
        assertThat(ISO.has(zone("A4"))).isFalse();
        assertThat(ISO.extent()).isEqualTo(new Box(10, 20, 310, 120));
    }

    @ParameterizedTest
    @CsvSource({"A1, A1, 0", "A1, A2, 1", "A1, B2, 1", "A1, B3, 2", "B3, A1, 2"})
    void neighboursAreOneStepAwayAlsoAcrossACorner(String a, String b, int steps) {
        assertThat(ISO.steps(zone(a), zone(b))).hasValue(steps);
    }

    @Test
    void stepsToAFieldThatIsNotThereAreUnknown() {
        assertThat(ISO.steps(zone("A1"), zone("K1"))).isEmpty();
        assertThat(ISO.steps(zone("A9"), zone("A1"))).isEmpty();
    }
}
