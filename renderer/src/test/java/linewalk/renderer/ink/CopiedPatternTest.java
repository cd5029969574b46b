package linewalk.renderer.ink;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import linewalk.linker.step.PressureClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each class is told from the black-and-white copy at A4 of an A3 print, whatever its length and how dark the copy. */
class CopiedPatternTest {

    /** Lengths, places between pixels and thresholds of a pale, a fair and a dark copy. */
    @ParameterizedTest
    @CsvSource({
        "150, 0.00, 0.50", "150, 0.17, 0.50", "150, 0.33, 0.50", "83, 0.25, 0.50", "61, 0.10, 0.50", "44, 0.40, 0.50",
        "150, 0.00, 0.48", "150, 0.25, 0.48", "61, 0.10, 0.48", "150, 0.00, 0.60", "150, 0.25, 0.60", "61, 0.10, 0.60"
    })
    void everyClassIsTold(double lengthPt, double offPt, double threshold) {
        for (Palette palette : Palette.values()) {
            Map<PressureClass, PressureClass> misread = new TreeMap<>();
            for (PressureClass c : PressureClass.values()) {
                Copy copy = level(palette.style(c), lengthPt, offPt, threshold);
                PatternReader.read(copy).filter(r -> r != c).ifPresent(r -> misread.put(c, r));
                assertThat(PatternReader.read(copy)).as(palette + " " + c).isPresent();
            }
            assertThat(misread).as(palette.name()).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 97, 150})
    void uprightLinesAreToldAsWell(double lengthPt) {
        for (PressureClass c : PressureClass.values()) {
            Copy copy = Copy.of(20, lengthPt + 8, 0.5, k -> Palette.OWN
                    .style(c)
                    .paint(k, List.of(new Point2D.Double(10, 4), new Point2D.Double(10, lengthPt + 4))));
            assertThat(PatternReader.read(copy.turned())).contains(c);
        }
    }

    private static Copy level(LineStyle style, double lengthPt, double offPt, double threshold) {
        return Copy.of(
                lengthPt + 8,
                20,
                threshold,
                c -> style.paint(
                        c, List.of(new Point2D.Double(4, 10 + offPt), new Point2D.Double(lengthPt + 4, 10 + offPt))));
    }

    /** The reader goes by the picture: what is drawn wrong is read wrong, and what is too pale is lost. */
    @Test
    void aFaultShows() {
        Color grey = Palette.OWN.color(PressureClass.IDLE);
        assertThat(PatternReader.read(level(new LineStyle(grey, 2, LinePattern.SOLID), 100, 0, 0.5)))
                .contains(PressureClass.RETURN);
        assertThat(PatternReader.read(level(new LineStyle(grey, 4, LinePattern.BEADS), 100, 0, 0.5)))
                .isNotEqualTo(Optional.of(PressureClass.HELD));
        assertThat(PatternReader.read(level(new LineStyle(new Color(0xFFD800), 4, LinePattern.BARS), 100, 0, 0.5)))
                .isEmpty();
    }

    /** Ink on the copy for the same length of line. */
    @Test
    void heldIsTheLoudestAndUnknownIsLouderThanIdle() {
        Map<PressureClass, Long> ink = new TreeMap<>();
        for (PressureClass c : PressureClass.values()) {
            long black = 0;
            for (boolean[] row : level(Palette.OWN.style(c), 150, 0, 0.5).ink()) {
                for (boolean dot : row) {
                    black += dot ? 1 : 0;
                }
            }
            ink.put(c, black);
        }
        ink.forEach((c, black) -> {
            if (c != PressureClass.HELD) {
                assertThat(black).as(c.name()).isLessThan(ink.get(PressureClass.HELD) * 3 / 4);
            }
        });
        assertThat(ink.get(PressureClass.UNKNOWN)).isGreaterThan(ink.get(PressureClass.IDLE) * 3 / 2);
    }
}
