package linewalk.linker;

import static linewalk.linker.Drawn.finding;
import static linewalk.linker.Drawn.findings;
import static linewalk.linker.Drawn.mates;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Origin;
import linewalk.drawing.Rule;
import linewalk.drawing.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The names that references use for sheets. */
class SheetNameTest {

    private static List<String> names(DrawingSet set) {
        return set.sheets().stream().map(Sheet::name).toList();
    }

    @ParameterizedTest
    @CsvSource({"05, 5, true", "uer 1234567, UER-1234567, true", "1.1, 11, false", "10, 1, false", "S 3, s3, true"})
    void namesAreComparedAsPeopleDo(String a, String b, boolean same) {
        assertThat(Names.sheetKey(a).equals(Names.sheetKey(b))).isEqualTo(same);
    }

    @Test
    void aNameThatReferencesUseGoesBeforeOneThatIsOnlyPrinted() {
        DrawingSet set = Drawn.of("""
                        sheet 1|UER-11
                        ref a B1 > UER-22 280
                        sheet 1|UER-22
                        ref b B1 > UER-11 280
                        """).link();
        assertThat(names(set)).containsExactly("UER-11", "UER-22");
        assertThat(mates(set, "a")).containsExactly("b");
    }

    @Test
    void aPageWithoutNumberGetsItsPlace() {
        DrawingSet set = Drawn.of("sheet 1\nsheet ?\nsheet 3").link();
        assertThat(names(set)).containsExactly("1", "2", "3");
        assertThat(set.sheets().get(1).origin()).isEqualTo(Origin.ORDER);
        assertThat(findings(set)).containsExactly("sheet-unnumbered");
    }

    @Test
    void aNumberBeyondTheCountThatIsPrintedWithItIsNone() {
        assertThat(names(Drawn.of("sheet 1 of=2\nsheet 21 of=2").link())).containsExactly("1", "2");
        DrawingSet used = Drawn.of("sheet 1 of=2\nref a B1 > 21/C1\nsheet 21 of=2\nref b C1 > 1/B1")
                .link();
        assertThat(names(used)).containsExactly("1", "21");
    }

    @Test
    void oneSheetTwice() {
        DrawingSet set = Drawn.of("sheet 1\nsheet 2\nsheet 02").link();
        assertThat(findings(set)).containsExactly("sheet-twice");
    }

    @Test
    void aGapInTheNumbers() {
        DrawingSet set = Drawn.of("sheet 1 of=4\nsheet 2 of=4\nsheet 4 of=4").link();
        assertThat(findings(set)).containsExactly("sheet-gap");
        assertThat(finding(set, Rule.SHEET_GAP).message()).contains("of 4", "3 is not in the set");
    }

    @Test
    void idsAreUniqueInTheSetThoughSheetsAreNot() {
        DrawingSet set =
                Drawn.of("sheet 2\nref a B1 > 2/C1\nsheet 2\nref a C1 > 2/B1").link();
        assertThat(set.references().stream().map(r -> r.id()).distinct()).hasSize(2);
    }

    @Test
    void aStandardGridOnlyWhereAskedForAndNoneIsPrinted() {
        Drawn drawn = Drawn.of("sheet 1\nsheet 2 nogrid");
        assertThat(drawn.link().sheets().get(1).grid()).isNull();
        drawn.standardGrid = "4x3";
        DrawingSet set = drawn.link();
        assertThat(set.sheets().get(0).grid().printed()).isTrue();
        assertThat(set.sheets().get(1).grid().printed()).isFalse();
        assertThat(set.sheets().get(1).grid().rows()).hasSize(3);
    }

    /** Field counts of ISO 5457:1999 as transcribed: A0 24x16, A1 16x12, A2 12x8, A3 8x6, A4 6x4 (long x short). */
    @ParameterizedTest
    @CsvSource({"1189, 841, 24, 16", "841, 594, 16, 12", "594, 420, 12, 8", "420, 297, 8, 6", "297, 210, 6, 4"})
    void fieldsOfTheIsoSizes(double widthMm, double heightMm, int columns, int rows) {
        double ptPerMm = 72 / 25.4;
        var grid = StandardGrid.of("iso5457", widthMm * ptPerMm, heightMm * ptPerMm);
        assertThat(grid.columns()).hasSize(columns);
        assertThat(grid.rows()).hasSize(rows);
    }

    /** Somewhere on sheet 2 stands SHEET 7, which the set does not have. */
    @Test
    void aSecondNumberIsNoOtherNameOfASheet() {
        DrawingSet set = Drawn.of("""
                        sheet 1
                        ref a B1 > 2/B1 280
                        ref c C1 > 7/B1 290
                        sheet 2|7
                        ref b B1 > 1/B1 280
                        """).link();
        assertThat(findings(set)).containsExactly("no-such-sheet c");
    }
}
