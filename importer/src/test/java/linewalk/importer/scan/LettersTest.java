package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.util.List;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.ocr.LetterReader;
import org.junit.jupiter.api.Test;

/** Letters where they are hard to find: alone in a circle, small marks of large lettering, words of fixed pitch. */
class LettersTest {

    private static List<String> texts(Sketch sketch) {
        try (LetterReader reader = LetterReader.lazy()) {
            return LabelBuilder.labels(
                            Sketch.read(sketch.grey(), reader).marks().glyphs())
                    .stream()
                    .map(Label::text)
                    .toList();
        }
    }

    private static Sketch notes() {
        return new Sketch().text("PUMP ROOM", 200, 200, 40).text("SEE THE LIST", 200, 280, 40);
    }

    @Test
    void aLetterInACircleMayBeLargerThanAllText() {
        Sketch sketch = notes().text("K", 680, 522, 64).circle(5, 700, 500, 80).line(5, 780, 500, 1000, 500);

        assertThat(texts(sketch)).contains("K");
    }

    @Test
    void theSameLetterWithoutCircleMayBeAFigure() {
        Sketch sketch = notes().text("K", 680, 522, 64).line(5, 780, 500, 1000, 500);

        assertThat(texts(sketch)).doesNotContain("K");
    }

    @Test
    void aCommaOfLargeLetteringIsPartOfItsText() {
        assertThat(texts(notes().text("BLOCK A, BLOCK B", 400, 500, 64))).contains("BLOCK A, BLOCK B");
    }

    @Test
    void wordsOfFixedPitchStandFartherApart() {
        Sketch sketch = new Sketch()
                .text("1 ALL PIPES ARE 20 X 2.5", 200, 200, 44, Font.MONOSPACED)
                .text("2 FILL WITH OIL AND SEAL IT", 200, 280, 44, Font.MONOSPACED)
                .text("SHT 1 ZN B1", 400, 500, 44, Font.MONOSPACED);

        assertThat(texts(sketch)).contains("SHT 1 ZN B1", "2 FILL WITH OIL AND SEAL IT");
    }

    /** Slim figures leave much white between them. */
    @Test
    void onesStandInOneWord() {
        assertThat(texts(notes().text("V311", 400, 500, 40).text("V111", 700, 500, 40)))
                .contains("V311", "V111");
    }

    @Test
    void aBlankBehindABroadLetterIsSeen() {
        assertThat(texts(notes().text("TO 3", 400, 500, 40).text("TO 4", 700, 500, 40)))
                .contains("TO 3", "TO 4");
    }

    /** As small as a speck, but level and at half the height of the capitals. */
    @Test
    void aShortHyphenIsNoSpeck() {
        Sketch sketch =
                notes().text("H", 400, 500, 64).line(5, 453, 478, 460, 478).text("08", 470, 500, 64);

        assertThat(texts(sketch)).contains("H-08");
    }

    @Test
    void figuresOneAreNoSlashes() {
        assertThat(texts(notes().text("L-110", 400, 500, 64))).contains("L-110");
    }

    @Test
    void aSpeckAboveTheLineIsNoLetter() {
        Sketch sketch = notes().text("1A1", 400, 500, 64).line(5, 520, 462, 524, 462);

        assertThat(texts(sketch)).contains("1A1");
    }

    @Test
    void onesOfInclinedLetteringAreNoSlashes() {
        Sketch sketch = new Sketch()
                .inclined("FILTRATION AND COOLING", 200, 200, 44)
                .inclined("FILL IN THE OIL", 200, 280, 44)
                .inclined("L-110", 400, 500, 44)
                .inclined("1/B1", 800, 500, 44);

        assertThat(texts(sketch)).contains("FILL IN THE OIL", "L-110", "1/B1");
    }
}
