package linewalk.importer.lettering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lettering of fixed pitch told from other lettering by the middles of its letters; capitals are 10 high. */
class CellTest {

    private static final double[] WIDTHS = {7, 4, 6.5, 7, 9, 7, 4, 7};

    /** @param pitch from middle to middle; 0 where letters stand 1.5 apart, whatever their widths */
    private static Cell cell(double pitch, double... widths) {
        Cell.Measure measure = new Cell.Measure();
        for (int row = 0; row < 4; row++) {
            List<Cell.Span> spans = new ArrayList<>();
            double x = 0;
            for (int i = 0; i < widths.length; i++) {
                double from = pitch > 0 ? i * pitch - widths[i] / 2 : x;
                spans.add(new Cell.Span(from, from + widths[i]));
                x = from + widths[i] + 1.5;
            }
            measure.add(spans, 10);
        }
        return measure.cell();
    }

    @Test
    void equalDistancesOfUnequalLettersAreAPitch() {
        Cell cell = cell(9, WIDTHS);

        assertThat(cell.fixed()).isTrue();
        assertThat(cell.pitch()).isEqualTo(0.9);
    }

    @Test
    void equalGapsAreNone() {
        assertThat(cell(0, WIDTHS)).isEqualTo(Cell.NONE);
    }

    @Test
    void lettersThatFillTheirCellsAreOfFixedPitch() {
        assertThat(cell(9, 7, 7, 7, 7, 7, 7, 5, 7, 7, 7, 7, 7).fixed()).isTrue();
    }

    @Test
    void figuresOfOneWidthAreNoneWhereAOneStandsCloser() {
        assertThat(cell(0, 7, 7, 2, 7, 7, 7, 2, 7, 7, 7, 7, 7, 7, 2, 7, 7)).isEqualTo(Cell.NONE);
    }

    @Test
    void whiteBesideANarrowLetterIsNoBlank() {
        Cell cell = cell(9, WIDTHS);

        assertThat(cell.gap(new Cell.Span(0, 7), new Cell.Span(11.5, 13.5), 10)).isLessThan(cell.blank());
        assertThat(cell.gap(new Cell.Span(0, 7), new Cell.Span(18, 25), 10)).isGreaterThan(cell.blank());
    }
}
