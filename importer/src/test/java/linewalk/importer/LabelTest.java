package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Glyphs to labels and their words. */
class LabelTest {

    private static List<Label> labels(Drawn d) {
        return LabelBuilder.labels(d.marks().glyphs());
    }

    private static List<String> texts(Drawn d) {
        return labels(d).stream().map(Label::text).sorted().toList();
    }

    @Test
    void wordsOfOneTextAreOneLabel() {
        List<Label> found = labels(Drawn.page().text(100, 100, "SEE SHEET 4"));

        assertThat(found).singleElement().satisfies(l -> {
            assertThat(l.text()).isEqualTo("SEE SHEET 4");
            assertThat(l.words()).extracting(Label.Word::text).containsExactly("SEE", "SHEET", "4");
        });
    }

    @Test
    void lettersPlacedOneByOneReadTheSame() {
        Drawn words = Drawn.page().text(100, 100, "SEE SHEET 4").text(100, 130, "0V12");
        Drawn letters =
                Drawn.page().glyphByGlyph().text(100, 100, "SEE SHEET 4").text(100, 130, "0V12");

        assertThat(labels(letters)).zipSatisfy(labels(words), (a, b) -> {
            assertThat(a.text()).isEqualTo(b.text());
            assertThat(a.box().center().distancePt(b.box().center())).isLessThan(0.1);
        });
    }

    @Test
    void lettersInAnyOrderOfDrawingReadAlongTheBaseline() {
        assertThat(texts(Drawn.page().text(112, 100, "4").text(106, 100, "B").text(100, 100, "2")))
                .containsExactly("2B4");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 90, 180, 270, 45})
    void turnedTextReadsAlongItsOwnBaseline(int angle) {
        List<Label> found = labels(Drawn.page().text(400, 400, angle, "2.B4 PUMP"));

        assertThat(found).singleElement().satisfies(l -> {
            assertThat(l.text()).isEqualTo("2.B4 PUMP");
            assertThat(l.angleDeg()).isCloseTo(angle, within(0.11));
            assertThat(l.upright()).isEqualTo(angle == 90 || angle == 270);
        });
    }

    @Test
    void textReadingUpwardsLiesAboveItsStart() {
        Label l = labels(Drawn.page().text(400, 400, 270, "2.B4")).get(0);

        assertThat(l.box().y1Pt()).isCloseTo(400, within(0.5));
        assertThat(l.box().heightPt()).isGreaterThan(2 * l.box().widthPt());
        assertThat(l.box().x1Pt()).isCloseTo(400, within(0.5));
    }

    @Test
    void boldPrintedTwiceAQuarterPointApartCountsOnce() {
        Drawn bold = Drawn.page().glyphByGlyph().text(100, 100, "1V2").text(100.25, 100, "1V2");

        assertThat(texts(bold)).containsExactly("1V2");
    }

    @Test
    void doubledLettersOfAWordAreKept() {
        assertThat(texts(Drawn.page().glyphByGlyph().text(100, 100, "11A 00 ALL")))
                .containsExactly("11A 00 ALL");
    }

    @Test
    void aGapLikeATabEndsALabel() {
        assertThat(texts(Drawn.page().text(100, 100, "P1").text(140, 100, "T1")))
                .containsExactly("P1", "T1");
    }

    @Test
    void linesOfTextAreLabelsOfTheirOwn() {
        assertThat(texts(Drawn.page().text(100, 100, "TO SHEET 4").text(100, 111, "ZONE B2")))
                .containsExactly("TO SHEET 4", "ZONE B2");
    }

    @Test
    void aDesignationAndTheSmallerRemarkBehindItAreTwo() {
        Drawn d = Drawn.page().lettering(10).text(100, 100, "1V2").lettering(7).text(118, 100, "210 bar");

        assertThat(texts(d)).containsExactly("1V2", "210 bar");
    }

    @Test
    void textThatCrossesTextStaysApart() {
        Drawn d = Drawn.page().text(100, 100, "ACROSS").text(118, 112, 270, "UP");

        assertThat(texts(d)).containsExactly("ACROSS", "UP");
    }

    @Test
    void blanksAloneAreNoLabel() {
        assertThat(texts(Drawn.page().text(100, 100, "   "))).isEmpty();
    }
}
