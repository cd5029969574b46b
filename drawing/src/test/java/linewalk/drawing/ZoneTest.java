package linewalk.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** IEC 61082-1 shows both orders (B3 and 18A); they are one zone. */
class ZoneTest {

    @ParameterizedTest
    @CsvSource({
        "B4, B4",
        "4B, B4",
        "18A, A18",
        "A18, A18",
        "b4, B4",
        "C-7, C7",
        "7-C, C7",
        "C 7, C7",
        "B04, B4",
        "04B, B4",
        "AA12, AA12",
        "A0, A0",
        "A00, A0"
    })
    void bothOrdersAndLeadingZerosAreOneZone(String printed, String zone) {
        assertThat(Zone.parse(printed)).map(Zone::toString).contains(zone);
    }

    @Test
    void equalZonesAreEqual() {
        assertThat(Zone.parse("04B")).isEqualTo(Zone.parse(" B4 "));
        assertThat(Zone.parse("B4")).isNotEqualTo(Zone.parse("B14"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "B", "4", "B4C", "4-4", "BB-BB", "B123", "ABC1", "B.4", "SHEET 4"})
    void otherTextIsNoZone(String printed) {
        assertThat(Zone.parse(printed)).isEmpty();
    }

    @Test
    void wrongZonesInFilesAreToldAsSuch() {
        assertThatThrownBy(() -> Zone.fromJson("top left")).hasMessageContaining("'top left' is no zone such as B4");
    }
}
