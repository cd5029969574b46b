package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.ReferenceReading.Evidence;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where references stand and what holds them: a text alone is none, a line ends at it or at the outline around it. */
class ReferenceTest {

    /** A valve whose port line runs to the right along y = 300 and stops at x. */
    private static Drawn lineTo(double x) {
        return Drawn.page().rect(200, 280, 240, 320).text(205, 272, "1V2").line(240, 300, x, 300);
    }

    private static void joined(Drawn d, String reference) {
        SheetReading r = d.read();
        assertThat(Said.references(r)).containsExactly(reference);
        assertThat(Said.lines(r))
                .containsExactly("1V2 - to "
                        + r.references().stream().map(Said::targets).findFirst().orElseThrow());
    }

    @Test
    void inAFlag() {
        joined(lineTo(500).flag(500, 290, 570, 310).text(507, 303, "2/B4"), "2/B4");
    }

    @Test
    void inABoxACircleOrASlantedOutline() {
        joined(lineTo(500).rect(500, 290, 560, 310).text(507, 303, "2/B4"), "2/B4");
        joined(lineTo(500).circle(520, 300, 20).text(511, 303, "2/B4"), "2/B4");
        joined(lineTo(505).polygon(500, 310, 510, 290, 570, 290, 560, 310).text(517, 303, "2/B4"), "2/B4");
    }

    /** A ruling of the title block ends at it. */
    @Test
    void thePagesOwnDrawingNumberIsNone() {
        Drawn block = Drawn.page()
                .line(800, 790, 1150, 790)
                .line(800, 820, 1150, 820)
                .line(800, 790, 800, 820)
                .line(1000, 790, 1000, 805)
                .text(950, 800, "DRAWING NO.")
                .text(985, 816, "HP63-H07");

        assertThat(Said.references(block.read())).isEmpty();
        assertThat(block.read().drawingNumber()).isEqualTo("HP63-H07");
    }

    @Test
    void inAFlagOfSingleStrokes() {
        Drawn d = lineTo(500)
                .line(500, 290, 560, 290)
                .line(560, 290, 570, 300)
                .line(570, 300, 560, 310)
                .line(560, 310, 500, 310)
                .line(500, 310, 500, 290)
                .text(507, 303, "2/B4");

        joined(d, "2/B4");
    }

    /** The bars stand across the line's end and behind the text; they are no branches. */
    @Test
    void betweenTwoBars() {
        Drawn d = lineTo(500)
                .line(500, 286, 500, 300)
                .line(500, 300, 500, 314)
                .line(560, 286, 560, 314)
                .text(510, 297, "SHT 2")
                .text(510, 308, "ZONE B4");

        joined(d, "2/B4");
    }

    @Test
    void aBarWithoutATextBeyondItStays() {
        SheetReading r = lineTo(500).line(500, 286, 500, 314).read();

        assertThat(Said.lines(r)).containsExactly("1V2 - open - open");
    }

    @Test
    void plainAtTheLinesEnd() {
        joined(lineTo(500).text(504, 303, "SHT 2 ZN B-4"), "2/B4");
        joined(lineTo(500).text(504, 303, "2.B4"), "2/B4");
    }

    @Test
    void aboveTheLinesEnd() {
        joined(lineTo(500).text(460, 296, "TO SHEET 2"), "2 out");
    }

    @Test
    void turnedAtTheEndOfALineThatRunsUp() {
        Drawn up = Drawn.page()
                .rect(200, 480, 240, 520)
                .text(150, 503, "1V2")
                .line(220, 480, 220, 300)
                .text(223, 296, 270, "2.B4");

        joined(up, "2/B4");
    }

    @Test
    void turnedInAFlagThatPointsDown() {
        Drawn down = Drawn.page()
                .rect(200, 280, 240, 320)
                .text(150, 303, "1V2")
                .line(220, 320, 220, 500)
                .polygon(210, 500, 230, 500, 230, 550, 220, 560, 210, 550)
                .text(217, 507, 90, "2/B4");

        joined(down, "2/B4");
    }

    @Test
    void twoLinesOfTextAreOneReference() {
        joined(lineTo(500).text(504, 299, "TO SHEET 2").text(504, 309, "ZONE B4"), "2/B4 out");
    }

    @Test
    void aLetterInACircleWithTheSheetBeneath() {
        joined(lineTo(500).circle(510, 300, 10).text(507, 303, "C").text(498, 321, "SH 4"), "4 C");
    }

    @Test
    void aLetterInACircleWithSheetAndZoneInTwoRowsBesideIt() {
        joined(
                lineTo(500)
                        .circle(510, 300, 10)
                        .text(507, 303, "C")
                        .text(526, 298, "A HOJA 4")
                        .text(526, 309, "ZONA B2"),
                "4/B2 C");
    }

    @Test
    void aNumberedFlagBesideADrawingNumber() {
        joined(lineTo(500).flag(500, 290, 540, 310).text(508, 303, "12").text(545, 303, "HX-40017"), "HX-40017 12");
    }

    @Test
    void twoStackedHalvesOfABalloon() {
        Drawn d = lineTo(500).circle(518, 300, 18).line(500, 300, 536, 300).text(515, 295, "2");
        d.text(511, 312, "B4");

        joined(d, "2/B4");
    }

    @Test
    void flagsThatTouchAreOneReferenceToSeveralPlaces() {
        Drawn d = lineTo(500)
                .rect(500, 290, 540, 310)
                .rect(540, 290, 580, 310)
                .text(507, 303, "2/B4")
                .text(547, 303, "3/C1");

        joined(d, "2/B4, 3/C1");
    }

    @Test
    void theLineNumberAlongTheLineIsItsLabel() {
        Drawn d = lineTo(500).flag(500, 290, 570, 310).text(507, 303, "2/B4").text(350, 297, "L-101");

        joined(d, "2/B4 L-101");
        assertThat(d.read().lines().get(0).label()).isEqualTo("L-101");
    }

    @Test
    void boxCoversTextAndFlag() {
        ReferenceReading r = lineTo(500)
                .flag(500, 290, 570, 310)
                .text(507, 303, "2/B4")
                .read()
                .references()
                .get(0);

        assertThat(r.box().grow(0.5).contains(new Box(500, 290, 570, 310))).isTrue();
        assertThat(r.evidence()).contains(Evidence.FLAG, Evidence.LINE_END);
        assertThat(r.confidence()).isGreaterThan(0.9);
    }

    @Test
    void aFlagThatNoLineMeetsIsDoubtful() {
        SheetReading r =
                Drawn.page().flag(500, 290, 570, 310).text(507, 303, "2/B4").read();

        assertThat(r.references()).singleElement().satisfies(x -> {
            assertThat(x.evidence()).doesNotContain(Evidence.LINE_END);
            assertThat(x.confidence()).isLessThanOrEqualTo(0.5);
        });
    }

    @Test
    void aTextThatNoLineEndsAtIsNone() {
        assertThat(Drawn.page()
                        .text(500, 300, "2/B4")
                        .text(500, 400, "SEE SHEET 5")
                        .read()
                        .references())
                .isEmpty();
        assertThat(lineTo(500).text(650, 303, "2/B4").read().references()).isEmpty();
    }

    @Test
    void twoEndsInOneFieldEachTakeTheirOwnText() {
        Drawn d = Drawn.page()
                .rect(200, 280, 240, 340)
                .text(150, 313, "1V2")
                .line(240, 300, 500, 300)
                .line(240, 320, 500, 320)
                .text(504, 303, "2.B4")
                .text(504, 323, "3.C1");

        assertThat(Said.lines(d.read())).containsExactly("1V2 - to 2/B4", "1V2 - to 3/C1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"G1/2", "G 1/4", "G3/8", "210 BAR", "M12x40", "2.A1 MAX.", "NOTE 4", "1450 1/MIN"})
    void atALinesEndAndStillNone(String text) {
        assertThat(lineTo(500).text(504, 303, text).read().references()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"4x M10", "6x M16x60-8.8 / TANK FEET", "4 x M10x35"})
    void aBoltCalloutAtALeaderIsNone(String text) {
        Drawn d = Drawn.page()
                .rect(200, 280, 240, 320)
                .text(205, 272, "1V2")
                .line(240, 300, 300, 240, 340, 240)
                .text(344, 243, text);

        assertThat(d.read().references()).isEmpty();
    }

    @Test
    void textsInARuledTableAreNone() {
        Drawn d = Drawn.page();
        for (int i = 0; i <= 4; i++) {
            d.line(600, 300 + 15 * i, 760, 300 + 15 * i);
        }
        d.line(600, 300, 600, 360).line(680, 300, 680, 360).line(760, 300, 760, 360);
        for (int i = 0; i < 4; i++) {
            d.text(605, 311 + 15 * i, "P-10" + i).text(685, 311 + 15 * i, (i + 2) + "/B4");
        }

        SheetReading r = d.read();

        assertThat(r.references()).isEmpty();
        assertThat(r.lines()).isEmpty();
        assertThat(r.components()).isEmpty();
    }

    @Test
    void aSetsOwnFormIsRead() {
        Drawn d = lineTo(500).text(504, 303, "GOTO 2@B4");
        SetSettings own = new SetSettings(null, List.of("GOTO (?<sheet>\\d+)@(?<zone>\\w+)"), null);

        assertThat(d.read().references()).isEmpty();
        assertThat(Said.references(d.read(own))).containsExactly("2/B4");
    }

    @Test
    void theSheetInAPentagonAndTheZoneBesideIt() {
        joined(lineTo(500).flag(500, 290, 540, 310).text(512, 303, "2").text(543, 303, "B4"), "2/B4");
        joined(lineTo(500).flag(540, 290, 500, 310).text(520, 303, "2").text(543, 303, "B4"), "2/B4");
    }

    @Test
    void aNumberInABoxWithANameBesideItIsNone() {
        SheetReading r = lineTo(500)
                .rect(500, 290, 540, 310)
                .text(517, 303, "2")
                .text(543, 303, "B4")
                .read();

        assertThat(Said.references(r)).isEmpty();
    }
}
