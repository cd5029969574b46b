package linewalk.tests.quality;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Marked;
import org.junit.jupiter.api.Test;

/** What counts as lying on lettering and what does not. The text is about 74 wide, from 100 to 174, capitals 89.7 to 100. */
class TextOverlapTest {

    private static final String WORDS = "CHECK VALVE";

    private static void words(Canvas c) {
        c.text(WORDS, 100, 100, 11);
    }

    private static List<String> kinds(Consumer<Canvas> drawing) {
        return Sheet.measured(drawing).overlaps().stream().map(Overlap::kind).toList();
    }

    @Test
    void aStrokeThroughATextCountsOnceBeforeOrAfterIt() {
        assertThat(kinds(c -> {
                    words(c);
                    c.line(50, 96, 250, 96);
                    c.line(50, 94, 250, 94);
                }))
                .containsExactly("text-stroke");
        assertThat(kinds(c -> {
                    c.line(140, 20, 140, 180);
                    words(c);
                }))
                .containsExactly("text-stroke");
    }

    @Test
    void evenOneThroughTheGapBetweenItsWordsDoes() {
        assertThat(kinds(c -> {
                    words(c);
                    c.pen(Ink.BLACK, Ink.line(0.5));
                    c.line(142.6, 20, 142.6, 180);
                }))
                .containsExactly("text-stroke");
    }

    @Test
    void whatPassesCloseByDoesNot() {
        assertThat(kinds(c -> {
                    words(c);
                    c.line(50, 101.5, 250, 101.5);
                    c.line(50, 90, 250, 90);
                    c.rect(97, 88, 90, 15);
                }))
                .isEmpty();
    }

    @Test
    void aDashedLineCountsWhereItHasInk() {
        assertThat(kinds(c -> {
                    c.pen(Ink.BLACK, Ink.dashed(1, 90, 90));
                    c.line(5, 96, 295, 96);
                    words(c);
                }))
                .isEmpty();
        assertThat(kinds(c -> {
                    c.pen(Ink.BLACK, Ink.dashed(1, 9, 9));
                    c.line(5, 96, 295, 96);
                    words(c);
                }))
                .containsExactly("text-stroke");
    }

    @Test
    void aTintWhollyBehindDoesNotAndItsEdgeDoes() {
        assertThat(kinds(c -> {
                    c.fill(Ink.PALE, new Rectangle2D.Double(90, 80, 110, 30));
                    words(c);
                }))
                .isEmpty();
        assertThat(kinds(c -> {
                    c.fill(Ink.PALE, new Rectangle2D.Double(90, 80, 40, 30));
                    words(c);
                }))
                .containsExactly("text-stroke");
    }

    @Test
    void aWhitePlateHidesWhatLiesUnderItAndNothingElse() {
        Rectangle2D plate = new Rectangle2D.Double(98, 88, 84, 14);
        assertThat(kinds(c -> {
                    c.line(50, 96, 250, 96);
                    c.fill(Color.WHITE, plate);
                    words(c);
                }))
                .isEmpty();
        assertThat(kinds(c -> {
                    c.fill(Color.WHITE, plate);
                    c.line(50, 96, 250, 96);
                    words(c);
                }))
                .containsExactly("text-stroke");
        assertThat(kinds(c -> {
                    words(c);
                    c.fill(Color.WHITE, new Rectangle2D.Double(150, 80, 60, 30));
                }))
                .containsExactly("text-stroke");
    }

    @Test
    void textOnText() {
        assertThat(kinds(c -> {
                    words(c);
                    c.text("0V1", 168, 104, 11);
                }))
                .containsExactly("text-text");
        assertThat(kinds(c -> {
                    words(c);
                    c.text("0V1", 100, 112, 11);
                    c.text("0V1", 200, 100, 11);
                }))
                .isEmpty();
    }

    @Test
    void linesAndSymbolsAreNamed() {
        List<Overlap> found = Sheet.measured(c -> {
                    words(c);
                    Sheet.line(c, "L-7", 50, 96, 250, 96);
                    Marked.symbol(c, "0V1", new Rectangle2D.Double(130, 60, 40, 36), k -> k.circle(150, 78, 18));
                })
                .overlaps();
        assertThat(found).extracting(Overlap::kind).contains("text-line", "text-symbol");
        assertThat(found).extracting(Overlap::what).anyMatch(w -> w.contains(WORDS) && w.contains("L-7"));
    }
}
