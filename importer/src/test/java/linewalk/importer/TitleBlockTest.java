package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Title blocks: fields of ISO 7200 and US practice; values in the caption's text, below it or to its right. */
class TitleBlockTest {

    private static String name(SheetReading r) {
        return r.names().isEmpty() ? null : r.names().get(0).name();
    }

    @ParameterizedTest
    @CsvSource({
        "Sheet 3 of 8,    3,   8",
        "SHEET 1 OF 1,    1,   1",
        "SHT 12 OF 40,    12,  40",
        "SH. 4 OF 9,      4,   9",
        "Page 2/6,        2,   6",
        "Blatt 5 von 7,   5,   7",
        "Hoja 5 de 7,     5,   7",
        "Foglio 5 di 7,   5,   7",
        "Folio 5 sur 7,   5,   7",
        "SHEET: H3 OF 12, H3,  12",
        "SHEET NO. 7,     7,",
    })
    void inOneText(String text, String name, Integer count) {
        SheetReading r = Drawn.page().text(1060, 800, text).read();

        assertThat(name(r)).isEqualTo(name);
        assertThat(r.sheetCount()).isEqualTo(count);
    }

    @Test
    void belowItsCaption() {
        SheetReading r = Drawn.page()
                .lettering(6)
                .text(1080, 780, "SHEET / SHEETS")
                .lettering(12)
                .text(1090, 796, "3 / 6")
                .read();

        assertThat(name(r)).isEqualTo("3");
        assertThat(r.sheetCount()).isEqualTo(6);
    }

    @Test
    void rightOfItsCaption() {
        SheetReading r = Drawn.page()
                .lettering(8)
                .text(1060, 800, "SHEET")
                .text(1100, 800, "4")
                .read();

        assertThat(name(r)).isEqualTo("4");
        assertThat(r.sheetCount()).isNull();
    }

    @Test
    void allFields() {
        SheetReading r = Drawn.page()
                .lettering(6)
                .text(850, 720, "TITLE")
                .text(850, 770, "DRAWING NO.")
                .text(1000, 770, "REV")
                .text(1060, 770, "SHEET")
                .lettering(12)
                .text(850, 738, "LIFT, LOWERING CIRCUIT")
                .text(850, 790, "HX-40017")
                .text(1000, 790, "C")
                .text(1060, 790, "2 OF 5")
                .read();

        assertThat(r.title()).isEqualTo("LIFT, LOWERING CIRCUIT");
        assertThat(r.drawingNumber()).isEqualTo("HX-40017");
        assertThat(r.revision()).isEqualTo("C");
        assertThat(name(r)).isEqualTo("2");
        assertThat(r.sheetCount()).isEqualTo(5);
    }

    @Test
    void theDrawingNumberIsASecondName() {
        SheetReading r = Drawn.page()
                .text(900, 800, "DWG NO: HX-40017")
                .text(1060, 800, "SHEET 3 OF 8")
                .read();

        assertThat(r.names()).extracting(SheetReading.Name::name).containsExactly("3", "HX-40017");
        assertThat(r.names().get(0).evidence()).contains("SHEET 3 OF 8");
    }

    @Test
    void revisionInItsCaptionsText() {
        assertThat(Drawn.page().text(1060, 800, "REV. D").read().revision()).isEqualTo("D");
        assertThat(Drawn.page().text(1060, 800, "REVISION: 4").read().revision())
                .isEqualTo("4");
    }

    @Test
    void aTitleOfTwoLinesIsOne() {
        SheetReading r = Drawn.page()
                .lettering(6)
                .text(850, 720, "TITLE")
                .lettering(12)
                .text(850, 736, "MAIN LIFT")
                .text(850, 752, "LOWERING CIRCUIT")
                .read();

        assertThat(r.title()).isEqualTo("MAIN LIFT, LOWERING CIRCUIT");
    }

    @Test
    void anotherSheetNamedInMidDrawingIsNotTheSheetsOwnName() {
        SheetReading r = Drawn.page()
                .text(300, 300, "SEE SHEET 5")
                .text(400, 500, "SH 6")
                .text(1060, 800, "SHEET 3 OF 8")
                .read();

        assertThat(r.names()).extracting(SheetReading.Name::name).containsExactly("3");
    }

    @Test
    void withoutTitleBlockThereIsNoName() {
        SheetReading r = Drawn.page().text(300, 300, "SEE SHEET 5").read();

        assertThat(r.names()).isEmpty();
        assertThat(r.title()).isNull();
        assertThat(r.drawingNumber()).isNull();
        assertThat(r.revision()).isNull();
    }

    @Test
    void aTitleBlockAlongTheBottomEdge() {
        SheetReading r = Drawn.page().text(80, 820, "SHEET 3 OF 8").read();

        assertThat(name(r)).isEqualTo("3");
    }

    @Test
    void theTitleOfTheSheetWithoutItsSize() {
        SheetReading r = Drawn.page()
                .lettering(5)
                .text(960, 770, "SHEET TITLE")
                .text(960, 798, "SIZE")
                .lettering(12)
                .text(960, 787, "LOCK PIN CYLINDERS")
                .text(960, 814, "D")
                .read();

        assertThat(r.title()).isEqualTo("LOCK PIN CYLINDERS");
    }
}
