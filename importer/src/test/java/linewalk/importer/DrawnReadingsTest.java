package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.page.Glyph;
import linewalk.importer.page.Glyph.Reading;
import org.junit.jupiter.api.Test;

/** A label of drawn letters says all that it may say, most likely first. */
class DrawnReadingsTest {

    private static Glyph drawn(int place, Reading... readings) {
        return new Glyph(readings[0].text(), new Point(100 + 6 * place, 100), 6, 10, 0, List.of(readings));
    }

    private static final Reading THREE = new Reading("3", 0.99);
    private static final Reading SLASH = new Reading("/", 0.99);
    private static final Reading B = new Reading("B", 0.6);
    private static final Reading EIGHT = new Reading("8", 0.4);
    private static final Reading FOUR = new Reading("4", 0.99);

    @Test
    void doubtfulLettersGiveSeveralReadings() {
        List<Label> labels =
                LabelBuilder.labels(List.of(drawn(0, THREE), drawn(1, SLASH), drawn(2, B, EIGHT), drawn(3, FOUR)));

        assertThat(labels).hasSize(1);
        assertThat(labels.get(0).drawn()).isTrue();
        assertThat(labels.get(0).readings()).extracting(Label.Reading::text).containsExactly("3/B4", "3/84");
        assertThat(labels.get(0).readings().get(0).likelihood()).isBetween(0.55, 0.6);
    }

    @Test
    void aTextLayerIsTold() {
        Label told = LabelBuilder.labels(List.of(new Glyph("P", new Point(100, 100), 6, 10, 0)))
                .get(0);

        assertThat(told.drawn()).isFalse();
        assertThat(told.readings()).isEmpty();
    }

    @Test
    void manyDoubtsStayFew() {
        List<Glyph> doubts = java.util.stream.IntStream.range(0, 12)
                .mapToObj(i -> drawn(i, B, EIGHT))
                .toList();

        assertThat(LabelBuilder.labels(doubts).get(0).readings()).hasSizeLessThanOrEqualTo(8);
    }
}
