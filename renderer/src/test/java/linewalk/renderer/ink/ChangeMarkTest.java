package linewalk.renderer.ink;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.util.List;
import linewalk.linker.step.PressureClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The mark of a change on lines of every class, on a black-and-white copy. */
class ChangeMarkTest {

    @ParameterizedTest
    @EnumSource(PressureClass.class)
    void isSeenOnEveryLine(PressureClass lineClass) {
        Copy copy = Copy.of(60, 20, 0.5, c -> {
            Palette.OWN.style(lineClass).paint(c, List.of(new Point2D.Double(0, 10), new Point2D.Double(60, 10)));
            ChangeMark.paintOnLine(c, 30, 10);
        });
        assertThat(isInk(copy, 28, 8)).as("the white half").isFalse();
        assertThat(isInk(copy, 32, 12)).as("the black half").isTrue();
        assertThat(isInk(copy, 25.7, 8)).as("its edge").isTrue();
        assertThat(isInk(copy, 24.5, 10)).as("free from the line").isFalse();
        assertThat(isInk(copy, 35.5, 10)).as("free from the line").isFalse();
    }

    private static boolean isInk(Copy copy, double xPt, double yPt) {
        return copy.ink()[(int) (yPt * Copy.PX_PER_PT)][(int) (xPt * Copy.PX_PER_PT)];
    }
}
