package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

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
}
