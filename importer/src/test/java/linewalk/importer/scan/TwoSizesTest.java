package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.ocr.ReadLetter.Option;
import org.junit.jupiter.api.Test;

/** What stands beside a text in one row with it and is read badly: small text that is read by itself, or a mark. */
class TwoSizesTest {

    private static final String NAME = "0V5";

    private static List<String> texts(Sketch sketch, Function<List<Integer>, List<Option>> says) {
        sketch.text("HHHHHHHH", 200, 200, 60).text("HHHHHHHH", 200, 300, 60);
        return LabelBuilder.labels(Sketch.read(sketch.grey(), new SignReader(says), NAME::equals)
                        .marks()
                        .glyphs())
                .stream()
                .map(Label::text)
                .toList();
    }

    /** What is much smaller than the largest of its line is read badly. */
    private static List<Option> ofOneSize(List<Integer> heights) {
        return heights.stream()
                .map(h -> new Option("H", h > 0.85 * Collections.max(heights) ? 0.95 : 0.1))
                .toList();
    }

    /** What is not as high as the others is a mark. */
    private static List<Option> marked(List<Integer> heights) {
        boolean name = heights.size() <= 4;
        int first = heights.size() - NAME.length();
        return java.util.stream.IntStream.range(0, heights.size())
                .mapToObj(i -> !name ? "H" : i < first ? "'" : NAME.substring(i - first, i - first + 1))
                .map(t -> new Option(t, 0.95))
                .toList();
    }

    @Test
    void aSmallNameBesideALargeOneIsReadByItself() {
        Sketch sketch = new Sketch().text("EE", 400, 500, 42).text("HHH", 486, 503, 60);
        assertThat(texts(sketch, TwoSizesTest::ofOneSize)).contains("HH", "HHH");
    }

    /** The last dash of a pilot line that ends beside its valve's name. */
    @Test
    void aDashBesideANameIsNoApostrophe() {
        Sketch sketch = new Sketch().line(7, 388, 454, 388, 470).text(NAME, 400, 500, 60);
        assertThat(texts(sketch, TwoSizesTest::marked)).contains(NAME);
    }
}
