package linewalk.importer.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.page.Glyph;
import linewalk.importer.page.Marks;
import org.junit.jupiter.api.Test;

/** Drawn letters become glyphs in their exact places; line work stays what it is. */
class StrokeLetteringTest {

    private static final String NOTE = "RETURN LINE TO THE SUMP 2";

    private static Written page() {
        return new Written()
                .text(100, 900, 10, 0, "PUMPS AND VALVES ON THE SOUTH SIDE")
                .text(100, 940, 10, 0, NOTE)
                .text(100, 980, 10, 0, "MOTOR BASE AND BOLTED RAILS");
    }

    private static Label label(Marks marks, String text) {
        return LabelBuilder.labels(marks.glyphs()).stream()
                .filter(l -> l.text().equals(text))
                .findFirst()
                .orElseThrow(() -> new AssertionError(text + " is not among " + Written.texts(marks)));
    }

    @Test
    void rowsAreRead() {
        Marks read = page().text(400, 300, 10, 0, "2/B4").read();

        assertThat(Written.texts(read)).contains(NOTE, "2/B4");
        assertThat(read.strokes()).isEmpty();
    }

    @Test
    void everyLetterStandsWhereItIsDrawn() {
        Label l = label(page().text(400, 300, 10, 0, "2/B4").read(), "2/B4");

        assertThat(l.box().x0Pt()).isCloseTo(400, within(0.1));
        assertThat(l.box().y1Pt()).isCloseTo(300, within(0.5));
        assertThat(l.box().y0Pt()).isCloseTo(290, within(0.5));
    }

    @Test
    void rowsThatReadUpwardsOrAtASlantAreRead() {
        Marks read = page().text(700, 600, 10, 270, "LINE 34")
                .text(900, 400, 10, 30, "DRAIN 72")
                .read();

        assertThat(label(read, "LINE 34").angleDeg()).isEqualTo(270);
        assertThat(label(read, "DRAIN 72").angleDeg()).isCloseTo(30, within(1.0));
        Glyph first = read.glyphs().stream()
                .filter(g -> Math.abs(g.angleDeg() - 30) < 1.5)
                .findFirst()
                .orElseThrow();
        assertThat(first.start().distancePt(new Point(900, 400))).isLessThan(1);
    }

    @Test
    void aLetterThatStandsAloneIsKnownByTheOthers() {
        assertThat(Written.texts(page().text(800, 300, 10, 0, "P").read())).contains("P");
    }

    @Test
    void paintedOutlinesAreLetters() {
        Marks read = new Written()
                .painted(100, 900, 10, "PUMPS AND VALVES IN THE ENGINE ROOM")
                .painted(100, 940, 10, "RETURN LINE TO THE TANK ON DECK 4")
                .painted(400, 300, 10, "2/B4")
                .read();

        assertThat(Written.texts(read)).contains("2/B4");
        assertThat(read.fills()).isEmpty();
    }

    @Test
    void lineWorkStays() {
        Marks read = page().line(1, 100, 300, 900, 300)
                .line(1, 500, 300, 500, 280)
                .line(1, 600, 310, 608, 310)
                .line(1, 620, 310, 628, 310)
                .line(1, 640, 310, 648, 310)
                .read();

        assertThat(read.strokes()).hasSize(5);
    }

    /** The halves of a throttle stand beside each other like two letters. */
    @Test
    void figuresOfAnotherSizeThanAnyTextStayLineWork() {
        Marks read = page().line(1, 600, 300, 606, 304, 609, 310, 606, 316, 600, 320)
                .line(1, 624, 300, 618, 304, 615, 310, 618, 316, 624, 320)
                .read();

        assertThat(read.strokes()).hasSize(2);
    }

    @Test
    void aPageWithoutDrawnLettersAsksForNoBook() {
        Marks told = new Written()
                .told(100, 100, 10, "PUMP")
                .line(1, 50, 50, 500, 50)
                .marks();

        Marks read = new StrokeLettering(null, () -> {
                    throw new AssertionError("nothing is drawn here");
                })
                .read(told);

        assertThat(read).isSameAs(told);
    }

    @Test
    void drawnLettersBesideATextLayerAreRead() {
        Marks read = page().told(1200, 1100, 10, "SHEET 3").read();

        assertThat(Written.texts(read)).contains("SHEET 3", NOTE);
    }

    @Test
    void lettersDrawnOverTheirOwnTextToLookBoldAreTold() {
        Written bold = new Written();
        for (int i = 0; i < 4; i++) {
            bold.text(100, 900 + 40 * i, 10, 0, "PUMPS AND VALVES").told(100, 900 + 40 * i, 14, "PUMPS AND VALVES");
        }

        assertThat(bold.read().glyphs()).hasSize(4 * "PUMPS AND VALVES".length());
    }

    @Test
    void drawnGlyphsKeepTheirReadings() {
        List<Glyph> glyphs = page().read().glyphs();

        assertThat(glyphs).allSatisfy(g -> assertThat(g.readings()).isNotEmpty());
        assertThat(glyphs)
                .allSatisfy(g -> assertThat(g.readings().get(0).likelihood()).isBetween(0.0, 1.0));
    }
}
