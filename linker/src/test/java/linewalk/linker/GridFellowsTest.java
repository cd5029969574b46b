package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.ZoneGrid.Band;
import org.junit.jupiter.api.Test;

/** Ends of borders that a picture has lost. */
class GridFellowsTest {

    private static List<String> columns(DrawingSet set, int sheet) {
        return set.sheets().get(sheet).grid().columns().stream()
                .map(Band::label)
                .toList();
    }

    @Test
    void theEndOfABorderIsAsOnTheOtherSheets() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        sheet 2
                        sheet 3 from=2
                        ref a B2 > 1/B1 ocr
                        """).link();
        assertThat(columns(set, 2)).containsExactly("1", "2", "3", "4");
        assertThat(set.sheets().get(2).grid().columns().get(0)).isEqualTo(new Band("1", 0, 100));
    }

    @Test
    void aPrintedBorderIsLeftAlone() {
        DrawingSet set =
                Drawn.of("sheet 1\nsheet 2\nsheet 3 from=2\nref a B2 > 1/B1").link();
        assertThat(columns(set, 2)).containsExactly("2", "3", "4");
    }

    @Test
    void oneOtherSheetIsNotEnough() {
        DrawingSet set =
                Drawn.of("sheet 1\nsheet 2 from=2\nref a B2 > 1/B1 ocr").link();
        assertThat(columns(set, 1)).containsExactly("2", "3", "4");
    }
}
