package linewalk.importer;

import static linewalk.importer.DrawnFrame.letters;
import static linewalk.importer.DrawnFrame.numbers;
import static linewalk.importer.DrawnFrame.reversed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.drawing.SheetReading;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;
import linewalk.importer.DrawnFrame.Side;
import org.junit.jupiter.api.Test;

/** Borders as drawings have them, beside the standard ones. */
class FrameTest {

    private static DrawnFrame frame(List<String> columns, List<String> rows) {
        return DrawnFrame.even(columns, rows, 40, 40, 1150, 800);
    }

    private static DrawnFrame usual() {
        return frame(numbers(8), letters(6));
    }

    private static ZoneGrid grid(Drawn d) {
        return d.read().grid();
    }

    @Test
    void labelsOnAllFourSides() {
        ZoneGrid g = grid(usual().on(Drawn.page()));

        assertThat(Said.columns(g)).isEqualTo("1 2 3 4 5 6 7 8");
        assertThat(Said.rows(g)).isEqualTo("A B C D E F");
        assertThat(g.printed()).isTrue();
        assertThat(g.zoneAt(new Point(45, 45))).contains(Zone.parse("A1").orElseThrow());
        assertThat(g.zoneAt(new Point(1140, 790))).contains(Zone.parse("F8").orElseThrow());
    }

    @Test
    void labelsOnTwoSidesOnly() {
        ZoneGrid g = grid(usual().on(Drawn.page(), EnumSet.of(Side.TOP, Side.LEFT)));

        assertThat(Said.columns(g)).isEqualTo("1 2 3 4 5 6 7 8");
        assertThat(Said.rows(g)).isEqualTo("A B C D E F");
        assertThat(g.extent().x1Pt()).isCloseTo(1150, within(2.0));
    }

    @Test
    void numbersFromZero() {
        List<String> columns = List.of("0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12");

        assertThat(Said.columns(grid(frame(columns, letters(6)).on(Drawn.page()))))
                .isEqualTo("0 1 2 3 4 5 6 7 8 9 10 11 12");
    }

    @Test
    void numbersRightToLeftAndLettersBottomToTop() {
        ZoneGrid g = grid(frame(reversed(numbers(5)), reversed(letters(4))).on(Drawn.page()));

        assertThat(Said.columns(g)).isEqualTo("5 4 3 2 1");
        assertThat(Said.rows(g)).isEqualTo("D C B A");
    }

    @Test
    void lettersAcrossAndNumbersDown() {
        ZoneGrid g = grid(frame(letters(8), numbers(6)).on(Drawn.page()));

        assertThat(Said.columns(g)).isEqualTo("A B C D E F G H");
        assertThat(Said.rows(g)).isEqualTo("1 2 3 4 5 6");
        assertThat(g.zoneAt(new Point(45, 790))).contains(Zone.parse("A6").orElseThrow());
    }

    @Test
    void whatTheTitleBlockHidesBelowIsReadAbove() {
        // the block stands over the last labels at the bottom and on the right: they were not plotted
        Drawn d = usual().on(Drawn.page(), EnumSet.of(Side.TOP, Side.LEFT));
        for (int i = 0; i < 5; i++) {
            d.text(40 + (i + 0.5) * 1110 / 8, 811, numbers(8).get(i));
        }
        for (int i = 0; i < 4; i++) {
            d.text(1155, 43 + (i + 0.5) * 760 / 6, letters(6).get(i));
        }

        ZoneGrid g = grid(d);

        assertThat(Said.columns(g)).isEqualTo("1 2 3 4 5 6 7 8");
        assertThat(Said.rows(g)).isEqualTo("A B C D E F");
    }

    /** Faded on a scan, or taken for a tick. */
    @Test
    void aSeriesBeginsWithItsFirstEvenWhereThatIsNotRead() {
        List<String> columns = List.of(" ", "2", "3", "4", "5", "6");
        List<String> rows = reversed(List.of(" ", "B", "C", "D"));

        ZoneGrid g = grid(frame(columns, rows).on(Drawn.page()));

        assertThat(Said.columns(g)).isEqualTo("1 2 3 4 5 6");
        assertThat(Said.rows(g)).isEqualTo("D C B A");
        assertThat(g.extent().x0Pt()).isCloseTo(40, within(2.0));
    }

    @Test
    void aSeriesDoesNotBeginBeforeTheFrame() {
        List<String> columns = List.of("2", "3", "4", "5", "6");

        assertThat(Said.columns(grid(frame(columns, letters(4)).on(Drawn.page()))))
                .isEqualTo("2 3 4 5 6");
    }

    @Test
    void withoutTicksFieldsEndHalfWay() {
        Drawn d = Drawn.page();
        for (int i = 0; i < 6; i++) {
            d.text(98 + 200 * i, 30, numbers(6).get(i));
            d.text(15, 83 + 130 * i, letters(6).get(i));
        }

        ZoneGrid g = grid(d);

        assertThat(g.columns().get(1).fromPt()).isCloseTo(200, within(1.0));
        assertThat(g.rows().get(1).fromPt()).isCloseTo(145, within(1.0));
    }

    @Test
    void strangeLettersInTheStripAreNoZones() {
        Drawn d = usual().on(Drawn.page());
        d.lettering(8).text(570, 34, "X").text(20, 300, "7");

        assertThat(Said.columns(grid(d))).isEqualTo("1 2 3 4 5 6 7 8");
        assertThat(Said.rows(grid(d))).isEqualTo("A B C D E F");
    }

    @Test
    void noLabelsNoGrid() {
        Drawn d = Drawn.page().rect(40, 40, 1150, 800).text(300, 300, "1V2").text(400, 300, "1V3");

        assertThat(grid(d)).isNull();
    }

    @Test
    void aRowOfTerminalNumbersInMidSheetIsNoGrid() {
        Drawn d = Drawn.page();
        for (int i = 0; i < 6; i++) {
            d.text(100 + 190 * i, 400, numbers(6).get(i))
                    .text(600, 60 + 130 * i, letters(6).get(i));
        }
        for (int i = 0; i < 12; i++) {
            d.text(150 + 80 * i, 200, "NOTE").text(150 + 80 * i, 600, "NOTE");
        }

        assertThat(grid(d)).isNull();
    }

    @Test
    void twoLettersDownOneEdgeAreNoRows() {
        Drawn d = frame(numbers(8), letters(2)).on(Drawn.page(), EnumSet.of(Side.TOP, Side.BOTTOM, Side.LEFT));

        assertThat(grid(d)).isNull();
    }

    @Test
    void zoneLabelsAndTicksAreNeitherReferencesNorLines() {
        SheetReading r = usual().on(Drawn.page()).read();

        assertThat(r.references()).isEmpty();
        assertThat(r.lines()).isEmpty();
        assertThat(r.components()).isEmpty();
    }

    /** One sheet may carry a coarse grid at its border and the finer one of its drawing area inside. */
    @Test
    void ofTwoNestedGridsOneIsReadWhole() {
        Drawn d = frame(numbers(4), letters(4)).on(Drawn.page());
        DrawnFrame.even(numbers(10), letters(7), 80, 80, 1110, 760).on(d);

        ZoneGrid g = grid(d);

        assertThat(Said.columns(g)).isEqualTo("1 2 3 4 5 6 7 8 9 10");
        assertThat(Said.rows(g)).isEqualTo("A B C D E F G");
        assertThat(g.extent().x0Pt()).isCloseTo(80, within(2.0));
    }
}
