package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Kind;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** A check valve's seat drawn as two strokes, the pipe ending where they meet. */
class SeatTest {

    /** 1V5 on the line from 1V1 down to 1V2, in a box of its own. */
    private static Drawn boxed() {
        return Drawn.page()
                .rect(380, 180, 420, 220)
                .text(340, 203, "1V1")
                .rect(380, 580, 420, 620)
                .text(340, 603, "1V2")
                .line(400, 220, 400, 396)
                .rect(386, 380, 414, 420)
                .circle(400, 400, 4)
                .line(393, 398, 400, 408, 407, 398)
                .line(400, 408, 400, 580)
                .text(425, 403, "1V5");
    }

    /** The arms with the line behind the ball look like an arrow in a square. */
    @Test
    void aPilotLineToTheSeatInABox() {
        SheetReading r = boxed().rect(300, 400, 340, 440)
                .text(300, 394, "1V6")
                .pen(0.7, 4, 2)
                .line(340, 414, 392, 414, 397, 406)
                .read();

        assertThat(Said.component(r, "1V5").kind()).isEqualTo(Kind.PILOT_CHECK_VALVE);
    }

    /** A side of the box is no cap of a test point. */
    @Test
    void aCheckInABox() {
        assertThat(Said.component(boxed().read(), "1V5").kind()).isEqualTo(Kind.CHECK_VALVE);
    }

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
