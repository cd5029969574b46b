package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import linewalk.drawing.Affine;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Sheet;
import org.junit.jupiter.api.Test;

/** The title block names all sheets with their revisions in little room. */
class SheetRevisionsTest {

    /** @param all sheet and revision, such as "3B" or "4" */
    private static String told(String... all) {
        List<Sheet> sheets = Stream.of(all)
                .map(s -> sheet(s.replaceAll("[B-Z]$", ""), s.matches(".*[B-Z]") ? s.substring(s.length() - 1) : null))
                .toList();
        return SheetRevisions.of(sheets);
    }

    private static Sheet sheet(String name, String revision) {
        return new Sheet(name, new PageKey("set.pdf", 1), 100, 100, null, revision, Origin.TEXT, null, Affine.IDENTITY);
    }

    @Test
    void threeInARowAreARange() {
        assertThat(told("5B", "1B", "2B", "3B", "4C")).isEqualTo("1-3, 5 rev B; 4 rev C");
    }

    @Test
    void twoInARowAreNone() {
        assertThat(told("9B", "10B")).isEqualTo("9, 10 rev B");
    }

    @Test
    void namesThatAreNoNumbersComeLast() {
        assertThat(told("H3B", "2B", "H2B")).isEqualTo("2, H2, H3 rev B");
    }

    @Test
    void aSheetWithoutRevisionSaysSo() {
        assertThat(told("2", "1B")).isEqualTo("1 rev B; 2 without revision");
    }
}
