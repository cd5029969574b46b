package linewalk.importer.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.importer.lettering.Cell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lettering in which every letter has the same room: white beside an I is no blank, and a blank is wider than usual. */
class FixedPitchTest {

    private static final String NOTE = "SUMP LID IS BUILT IN PIT 21";

    private static Written page(double deg) {
        return new Written()
                .pitched(600, 300, 10, 0, "BLIND PUMP ENDS IN BUILT LIDS")
                .pitched(300, 700, 10, deg, NOTE)
                .pitched(340, 700, 10, deg, "BLIND PIPE ENDS AT PUMP 1")
                .pitched(380, 700, 10, deg, "MAIN LINE IS 2.4 IN SIDE 3");
    }

    private static List<Row> rows(Written page) {
        return PageInk.of(page.marks()).rows();
    }

    @ParameterizedTest
    @ValueSource(doubles = {270, 90})
    void wordsHoldTogetherInUprightRows(double deg) {
        assertThat(Written.texts(page(deg).read())).contains(NOTE);
    }

    @Test
    void wordsHoldTogetherInLevelRows() {
        Written page = new Written()
                .pitched(100, 900, 10, 0, NOTE)
                .pitched(100, 940, 10, 0, "BLIND PIPE ENDS AT PUMP 1")
                .pitched(100, 980, 10, 0, "MAIN LINE IS 2.4 IN SIDE 3")
                .pitched(600, 300, 10, 0, "1V1");

        assertThat(Written.texts(page.read())).contains(NOTE, "MAIN LINE IS 2.4 IN SIDE 3", "1V1");
    }

    @Test
    void theRoomOfALetterIsSeen() {
        Cell cell = rows(page(270)).get(0).cell();

        assertThat(cell.pitch()).isBetween(0.95, 1.05);
        assertThat(cell.width()).isBetween(0.6, 0.75);
    }

    @Test
    void lettersThatTakeOnlyTheRoomTheyNeedHaveNoPitch() {
        Written page = new Written()
                .text(100, 900, 10, 0, NOTE)
                .text(100, 940, 10, 0, "BLIND PIPE ENDS AT PUMP 1")
                .text(100, 980, 10, 0, "MAIN LINE IS 2.4 IN SIDE 3");

        assertThat(rows(page)).allSatisfy(r -> assertThat(r.cell()).isEqualTo(Cell.NONE));
        assertThat(Written.texts(page.read())).contains(NOTE);
    }
}
