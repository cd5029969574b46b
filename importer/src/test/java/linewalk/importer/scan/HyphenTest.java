package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.ocr.LetterReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A hyphen is part of a reference, however long it is; small and large lettering (ISO 3098: 2.5 to 5 mm). */
class HyphenTest {

    @ParameterizedTest
    @ValueSource(doubles = {40, 55, 80})
    void aHyphenBelongsToItsText(double size) {
        Sketch sketch = new Sketch().text("PUMP ROOM", 200, 200, 60).text("3-G1", 400, 500, size);
        try (LetterReader reader = LetterReader.lazy()) {
            List<Label> labels = LabelBuilder.labels(
                    Sketch.read(sketch.grey(), reader).marks().glyphs());
            assertThat(labels.stream().map(Label::text)).contains("3-G1");
        }
    }

    /** Bold lettering of fixed pitch: the hyphen is four fifths of a capital long and fills the room of a letter. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 7})
    void aLongHyphenStandsForALetter(double besidePx) {
        double to = 444 + besidePx + 23 + besidePx;
        Sketch sketch = new Sketch()
                .text("PUMP ROOM", 200, 200, 40)
                .text("TEST BENCH", 200, 300, 40)
                .text("ZONE", 290, 500, 40)
                .text("E", 420, 500, 40)
                .text("8", to, 500, 40)
                .fill(new Rectangle2D.Double(444 + besidePx, 484, 23, 5));
        try (LetterReader reader = LetterReader.lazy()) {
            List<Label> labels = LabelBuilder.labels(
                    Sketch.read(sketch.grey(), reader).marks().glyphs());
            assertThat(labels.stream().map(Label::text)).contains("ZONE E-8");
        }
    }
}
