package linewalk.renderer.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.Map;
import linewalk.drawing.Line;
import linewalk.drawing.Point;
import org.junit.jupiter.api.Test;

/** Lines that could be taken for one another differ in colour. */
class LineColoursTest {

    private final OverlayBench bench = new OverlayBench();

    private Map<Line, Color> colours() {
        return LineColours.of(bench.lines, new Scale(1));
    }

    @Test
    void neighboursDiffer() {
        for (int i = 0; i < 40; i++) {
            bench.line(1, new Point(0, 25 * i), new Point(500, 25 * i));
        }
        Map<Line, Color> colours = colours();
        for (int i = 2; i < 40; i++) {
            Color mine = colours.get(bench.lines.get(i));
            assertThat(mine)
                    .isNotEqualTo(colours.get(bench.lines.get(i - 1)))
                    .isNotEqualTo(colours.get(bench.lines.get(i - 2)));
        }
    }

    @Test
    void linesThatCrossDifferThoughTheirEndsAreFarApart() {
        Line across = bench.line(1, new Point(0, 500), new Point(1000, 500));
        for (int i = 0; i < Tint.LINES.size() - 1; i++) {
            bench.line(1, new Point(0, 5000), new Point(0, 6000));
        }
        Line down = bench.line(1, new Point(500, 0), new Point(500, 1000));
        assertThat(colours().get(down)).isNotEqualTo(colours().get(across));
    }

    @Test
    void allColoursAreUsedInTurn() {
        for (int i = 0; i < Tint.LINES.size(); i++) {
            bench.line(1, new Point(0, 1000 * i), new Point(500, 1000 * i));
        }
        assertThat(colours().values()).containsExactlyInAnyOrderElementsOf(Tint.LINES);
    }
}
