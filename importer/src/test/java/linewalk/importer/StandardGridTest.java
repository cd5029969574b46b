package linewalk.importer;

import static linewalk.importer.DrawnFrame.PT_PER_MM;
import static linewalk.importer.DrawnFrame.letters;
import static linewalk.importer.DrawnFrame.numbers;
import static linewalk.importer.DrawnFrame.reversed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import linewalk.drawing.Point;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Zone grids of the standards, drawn from their own numbers and read back: labels and borders of every field. */
class StandardGridTest {

    private static final double SLACK_PT = 1;

    /**
     * ISO 5457:1999, 4.5 and its table of fields: fields of 50 mm from the centring marks, what is left in the end
     * fields; letters top to bottom, numbers left to right, without I and O; frame 20 mm from the left edge, 10 mm from
     * the others. A4 stands, the others lie.
     */
    @ParameterizedTest(name = "{0}: {3} x {4}, last row {5}")
    @CsvSource({
        "A0, 1189, 841, 24, 16, R",
        "A1,  841, 594, 16, 12, M",
        "A2,  594, 420, 12,  8, H",
        "A3,  420, 297,  8,  6, F",
        "A4,  210, 297,  4,  6, F",
    })
    void iso5457(String size, double wMm, double hMm, int columns, int rows, String lastRow) {
        double w = wMm * PT_PER_MM;
        double h = hMm * PT_PER_MM;
        double field = 50 * PT_PER_MM;
        double mm10 = 10 * PT_PER_MM;
        double[] x = DrawnFrame.fromTheMiddle(columns, w, field, 2 * mm10, w - mm10);
        double[] y = DrawnFrame.fromTheMiddle(rows, h, field, mm10, h - mm10);

        ZoneGrid grid = new DrawnFrame(numbers(columns), x, letters(rows), y)
                .on(Drawn.page(w, h))
                .read()
                .grid();

        assertThat(grid.columns()).extracting(ZoneGrid.Band::label).isEqualTo(numbers(columns));
        assertThat(grid.rows()).extracting(ZoneGrid.Band::label).isEqualTo(letters(rows));
        assertThat(grid.rows().get(rows - 1).label()).isEqualTo(lastRow);
        bordersAre(grid.columns(), x);
        bordersAre(grid.rows(), y);
        // the field right below and right of the middle of the sheet
        assertThat(grid.zoneAt(new Point(w / 2 + 5, h / 2 + 5)))
                .contains(Zone.parse(letters(rows).get(rows / 2) + (columns / 2 + 1))
                        .orElseThrow());
    }

    /**
     * ASME Y14.1 (from memory, except the counts): fields of one size, numbers right to left, letters bottom to top,
     * from the lower right. Inches.
     */
    @ParameterizedTest(name = "{0}: {3} x {4}")
    @CsvSource({"B, 17, 11, 4, 2", "C, 22, 17, 4, 4", "D, 34, 22, 8, 4", "E, 44, 34, 8, 8"})
    void asmeY14point1(String size, double wIn, double hIn, int columns, int rows) {
        double w = 72 * wIn;
        double h = 72 * hIn;
        DrawnFrame frame = DrawnFrame.even(reversed(numbers(columns)), reversed(letters(rows)), 36, 36, w - 36, h - 36);

        ZoneGrid grid = frame.on(Drawn.page(w, h)).read().grid();

        assertThat(grid.columns()).extracting(ZoneGrid.Band::label).isEqualTo(reversed(numbers(columns)));
        assertThat(grid.rows()).extracting(ZoneGrid.Band::label).isEqualTo(reversed(letters(rows)));
        bordersAre(grid.columns(), frame.xPt());
        bordersAre(grid.rows(), frame.yPt());
        assertThat(grid.zoneAt(new Point(w - 40, h - 40)))
                .contains(Zone.parse("A1").orElseThrow());
    }

    private static void bordersAre(List<ZoneGrid.Band> bands, double[] at) {
        for (int i = 0; i < bands.size(); i++) {
            assertThat(bands.get(i).fromPt())
                    .as("start of " + bands.get(i).label())
                    .isCloseTo(at[i], within(SLACK_PT));
            assertThat(bands.get(i).toPt()).as("end of " + bands.get(i).label()).isCloseTo(at[i + 1], within(SLACK_PT));
        }
    }
}
