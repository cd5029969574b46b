package linewalk.tests.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Marked;
import org.junit.jupiter.api.Test;

/** Empty area of the picture's field and the size of lettering. */
class FieldFiguresTest {

    private static final double CM = 72 / 2.54;
    private static final Rectangle2D FIELD = new Rectangle2D.Double(10, 10, 4 * CM, 5 * CM);

    @Test
    void squaresWithoutInkAreEmpty() {
        assertThat(Sheet.measured(c -> Marked.field(c, FIELD, k -> {
                            k.line(12, 12, 12, 20);
                            k.line(10, 10 + 4.5 * CM, 10 + 4 * CM, 10 + 4.5 * CM);
                        }))
                        .figures()
                        .get("empty.share"))
                .isCloseTo(15 / 20.0, within(1e-9));
    }

    /** What stands beside the field does not fill it, nor does a tint over all of it. */
    @Test
    void onlyInkInTheFieldCounts() {
        assertThat(Sheet.measured(c -> {
                            c.fill(Ink.PALE, new Rectangle2D.Double(0, 0, 300, 200));
                            Marked.field(c, FIELD, k -> {});
                            c.line(200, 10, 200, 190);
                        })
                        .figures()
                        .get("empty.share"))
                .isEqualTo(1);
    }

    /** What the print calls its match marks; other symbols are none. */
    @Test
    void matchMarksAreCounted() {
        Rectangle2D box = new Rectangle2D.Double(20, 20, 30, 15);
        Rectangle2D other = new Rectangle2D.Double(120, 20, 30, 15);
        assertThat(Sheet.measured(c -> {
                            Marked.symbol(c, "match line 7 0", box, k -> k.text("A", 25, 32, 11));
                            Marked.symbol(c, "part 1V1", other, k -> k.text("1V1", 125, 32, 11));
                        })
                        .figures()
                        .get("match.marks"))
                .isEqualTo(1);
    }

    /** Capital height over size of Liberation Sans, as its table OS/2 says: 1409 of 2048. */
    @Test
    void theSmallestCapitals() {
        assertThat(Sheet.measured(c -> {
                            c.text("ENOUGH", 20, 50, 12);
                            c.text("tiny", 20, 90, 8);
                        })
                        .figures()
                        .get("capitals.mm"))
                .isCloseTo(8 * 1409 / 2048.0 * 25.4 / 72, within(0.005));
    }

    /** A hair line just above the capitals touches nothing, and one just below their tops does. */
    @Test
    void theCapitalsInkIsAsHighAsTold() {
        double toldMm =
                Sheet.measured(c -> c.text("HEIGHT", 20, 50, 20)).figures().get("capitals.mm");
        Quality crossed = Sheet.measured(c -> {
            c.text("HEI", 20, 100, 20);
            c.pen(Ink.BLACK, Ink.line(0.2));
            c.line(10, 100 - toldMm * 72 / 25.4 - 0.2, 290, 100 - toldMm * 72 / 25.4 - 0.2);
        });
        assertThat(crossed.overlaps()).isEmpty();
        assertThat(Sheet.measured(c -> {
                            c.text("HEI", 20, 100, 20);
                            c.pen(Ink.BLACK, Ink.line(0.2));
                            c.line(10, 100 - toldMm * 72 / 25.4 + 0.3, 290, 100 - toldMm * 72 / 25.4 + 0.3);
                        })
                        .overlaps())
                .hasSize(1);
    }
}
