package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.importer.page.Marks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A worn pen or a fold breaks a line; gaps that a drafter leaves are wider than the pen. */
class DropoutTest {

    private static final int FRAME = 4;

    @ParameterizedTest
    @ValueSource(doubles = {0, -1.3, 0.6})
    void aBreakShorterThanThePenIsNone(double skewDeg) {
        Marks m = new Sketch(skewDeg)
                .line(5, 300, 400, 600, 400)
                .line(5, 603, 400, 1000, 400)
                .line(5, 300, 200, 300, 497)
                .line(5, 300, 500, 300, 800)
                .marks();
        assertThat(m.strokes()).hasSize(FRAME + 2);
    }

    @Test
    void aGapWiderThanThePenStays() {
        Marks m = new Sketch()
                .line(5, 300, 400, 600, 400)
                .line(5, 612, 400, 1000, 400)
                .marks();
        assertThat(m.strokes()).hasSize(FRAME + 2);
    }
}
