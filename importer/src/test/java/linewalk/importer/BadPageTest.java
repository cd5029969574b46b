package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** Pages that are no usual drawing sheets still give a reading. */
class BadPageTest {

    private static void saysNothing(SheetReading r) {
        assertThat(r.names()).isEmpty();
        assertThat(r.grid()).isNull();
        assertThat(r.references()).isEmpty();
        assertThat(r.components()).isEmpty();
        assertThat(r.lines()).isEmpty();
        assertThat(r.doubts()).isEmpty();
    }

    @Test
    void anEmptyPage() {
        saysNothing(Drawn.page().read());
    }

    /** The largest page of ISO 32000-1, annex C: 14,400 units a side. */
    @Test
    void thePageOfLargestSize() {
        SheetReading r = Drawn.page(14_400, 14_400)
                .rect(7000, 7000, 7040, 7040)
                .text(7000, 6994, "1V2")
                .line(7040, 7020, 14_000, 7020)
                .text(14_004, 7023, "2.B4")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V2 - to 2/B4");
        assertThat(r.widthPt()).isEqualTo(14_400);
    }

    @Test
    void aPageOfOneInch() {
        saysNothing(Drawn.page(72, 72).line(10, 10, 60, 60).read());
    }

    @Test
    void aPageWithoutFrame() {
        SheetReading r = Drawn.page()
                .rect(200, 280, 240, 320)
                .text(205, 272, "1V2")
                .line(240, 300, 500, 300)
                .text(504, 303, "2.B4")
                .read();

        assertThat(r.grid()).isNull();
        assertThat(Said.lines(r)).containsExactly("1V2 - to 2/B4");
    }

    @Test
    void strokesOfNoLength() {
        saysNothing(Drawn.page()
                .line(300, 300, 300, 300)
                .polygon(400, 400, 400, 400, 400, 400)
                .read());
    }

    @Test
    void drawingBeyondThePagesEdge() {
        SheetReading r = Drawn.page()
                .rect(200, 280, 240, 320)
                .text(205, 272, "1V2")
                .line(240, 300, 5000, 300)
                .line(-900, 300, 200, 300)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V2 - open", "1V2 - open");
    }

    @Test
    void aPageOfTextOnly() {
        Drawn d = Drawn.page();
        for (int i = 0; i < 60; i++) {
            d.text(60, 30 + 13 * i, "1V" + i + " CHECK BEFORE START. SEE SHEET " + i + " ZONE B4");
        }

        SheetReading r = d.read();

        assertThat(r.references()).isEmpty();
        assertThat(r.components()).isEmpty();
        assertThat(r.grid()).isNull();
    }

    @Test
    void theSamePageReadTwiceGivesTheSameReading() {
        Drawn d = Drawn.page()
                .rect(200, 280, 240, 320)
                .text(205, 272, "1V2")
                .line(240, 300, 500, 300)
                .text(504, 303, "2.B4")
                .line(220, 320, 220, 700);

        assertThat(d.read()).isEqualTo(d.read());
    }

    /** The other pages of the set are read all the same. */
    @Test
    void aPageThatTheProgramFailsAtSaysSo() {
        Drawn d = Drawn.page();
        for (double x = 300; x < 360; x += 6) {
            d.line(x, 300, x, 305).line(x + 3, 300, x + 3, 305).line(x, 302.5, x + 3, 302.5);
        }
        SheetReading r = d.read(new SetSettings(null, null, null), () -> {
            throw new IllegalStateException("no such shape");
        });

        assertThat(r.lines()).isEmpty();
        assertThat(r.doubts()).singleElement().satisfies(f -> assertThat(f.message())
                .contains("this page was not read", "an error of the program itself", "no such shape"));
    }
}
