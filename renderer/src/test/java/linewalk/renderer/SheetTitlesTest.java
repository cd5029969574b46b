package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import linewalk.drawing.Affine;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Origin;
import linewalk.drawing.Sheet;
import org.junit.jupiter.api.Test;

/** The set is called as the titles of its sheets begin. */
class SheetTitlesTest {

    private static SheetTitles of(String... titles) {
        List<Sheet> sheets = Arrays.stream(titles)
                .map(t -> new Sheet("1", Bench.page(1), 100, 100, t, null, Origin.TEXT, null, Affine.IDENTITY))
                .toList();
        return SheetTitles.of(new DrawingSet(sheets, List.of(), List.of(), List.of(), List.of(), List.of()));
    }

    @Test
    void byWhatMostHaveInCommon() {
        SheetTitles titles =
                of("LOCK GATE, SOUTH, PUMPS", "LOCK GATE, SOUTH, VALVES", null, "LOCK GATE, SOUTH", "SPARE PARTS");
        assertThat(titles.lead()).isEqualTo("LOCK GATE, SOUTH");
        assertThat(titles.own("LOCK GATE, SOUTH, VALVES")).isEqualTo("VALVES");
        assertThat(titles.own("LOCK GATE, SOUTH")).isEqualTo("LOCK GATE, SOUTH");
        assertThat(titles.own("SPARE PARTS")).isEqualTo("SPARE PARTS");
    }

    @Test
    void notByPartsOfWords() {
        assertThat(of("PUMP ROOM", "PUMP PIT").lead()).isEmpty();
    }

    @Test
    void notByOneSheetAlone() {
        assertThat(of("LOCK GATE, PUMPS", null).lead()).isEmpty();
        assertThat(of("LOCK GATE, PUMPS", "QUAY CRANE, PUMPS").own("LOCK GATE, PUMPS"))
                .isEqualTo("LOCK GATE, PUMPS");
    }
}
