package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Kind;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** A check valve's seat drawn as two strokes, the pipe ending where they meet. */
class SeatTest {

    @Test
    void armsThatLieOnTheBallBelongToItHoweverLong() {
        SheetReading r = Drawn.page()
                .rect(380, 180, 420, 220)
                .text(340, 203, "1V1")
                .rect(380, 580, 420, 620)
                .text(340, 603, "1V2")
                .line(400, 220, 400, 393)
                .circle(400, 400, 7)
                .line(386.8, 396.6, 400, 410.5)
                .line(413.4, 396.6, 400, 410.5)
                .line(400, 410.5, 400, 580)
                .text(425, 403, "1V5")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V5", "1V2 - 1V5");
        assertThat(Said.component(r, "1V5").kind()).isEqualTo(Kind.CHECK_VALVE);
    }
}
