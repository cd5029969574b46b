package linewalk.importer.lettering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.importer.lettering.Label.Reading;
import linewalk.importer.lettering.ReferenceGrammar.Parsed;
import org.junit.jupiter.api.Test;

/** A label that was read from an image says as a reference whatever its letters may be. */
class SaidReadingsTest {

    private static final ReferenceGrammar GRAMMAR = new ReferenceGrammar(List.of());

    private static Optional<Parsed> said(Reading... readings) {
        Label label = new Label(readings[0].text(), new Box(0, 0, 30, 5), 5, 0, List.of(), List.of(readings));
        return SaidReadings.of(label, GRAMMAR::parse);
    }

    private static List<String> targets(Optional<Parsed> parsed) {
        return parsed.orElseThrow().readings().stream()
                .map(s -> s.targets().get(0).sheet() + " " + s.targets().get(0).zone())
                .toList();
    }

    @Test
    void everyReadingThatIsOneCounts() {
        assertThat(targets(said(new Reading("3/B8", 0.5), new Reading("3/88", 0.4), new Reading("3/E8", 0.2))))
                .containsExactly("3 B8", "3 E8");
    }

    @Test
    void likelihoodsAreSharesOfAllThatItMaySay() {
        Optional<Parsed> parsed = said(new Reading("3/B8", 0.3), new Reading("3/88", 0.1));
        assertThat(parsed.orElseThrow().readings())
                .extracting(s -> Math.round(100 * s.likelihood()))
                .containsExactly(75L);
    }

    /** The first reading is none: the next one that is likely. */
    @Test
    void aTextThatIsNoneMayBeOneAllTheSame() {
        assertThat(targets(said(new Reading("3/B&", 0.5), new Reading("3/B6", 0.2))))
                .containsExactly("3 B6");
    }

    /** {@code H-07} may be a zone, {@code H-O7} none: that makes the misread one no likelier. */
    @Test
    void twoMeaningsDoNotTakeFromAReading() {
        assertThat(targets(said(new Reading("H-07/B6", 0.5), new Reading("H-O7/B6", 0.4))))
                .containsExactly("H-07 B6", "B6 H7", "H-O7 B6");
    }

    /** None of its readings is one: what S and B are taken for stays open. */
    @Test
    void aLetterThatWasNotReadIsAmongThoseThatLookAlike() {
        assertThat(targets(said(new Reading("3/BS", 0.9)))).containsExactlyInAnyOrder("3 B5", "3 B8", "3 S8");
    }

    @Test
    void aWordStaysAWord() {
        assertThat(said(new Reading("DRAIN", 0.9))).isEmpty();
    }
}
