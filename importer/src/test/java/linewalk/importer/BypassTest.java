package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Kind;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** A throttle with its check, drawn apart: one part, and its ports are where the two ways meet. */
class BypassTest {

    /** A throttle in the line from 1V1 down to 1V2; a way beside it leaves and comes back with dots. */
    private static Drawn throttle() {
        return Drawn.page()
                .rect(380, 180, 420, 220)
                .text(340, 203, "1V1")
                .rect(380, 580, 420, 620)
                .text(340, 603, "1V2")
                .line(400, 220, 400, 580)
                .curve(390, 390, 397, 395, 397, 405, 390, 410)
                .curve(410, 390, 403, 395, 403, 405, 410, 410)
                .dot(400, 370)
                .dot(400, 430)
                .line(400, 370, 425, 370, 425, 395)
                .circle(425, 400, 5)
                .line(418, 396, 425, 408, 432, 396)
                .line(425, 408, 425, 430, 400, 430);
    }

    @Test
    void theyAreOnePart() {
        SheetReading r = throttle().text(440, 403, "1V5").read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V5", "1V2 - 1V5");
        assertThat(Said.component(r, "1V5").kind()).isEqualTo(Kind.FLOW_CONTROL);
        assertThat(Said.component(r, "1V5").ports()).hasSize(2);
    }

    /** The arms of the check's seat stand between both figures: they hold the ball that they are nearer to. */
    @Test
    void aFilterAndTheSprungCheckBesideIt() {
        SheetReading r = Drawn.page()
                .rect(380, 180, 420, 220)
                .text(340, 203, "1V1")
                .rect(380, 580, 420, 620)
                .text(340, 603, "1V2")
                .line(400, 220, 400, 374)
                .line(400, 426, 400, 580)
                .polygon(400, 374, 426, 400, 400, 426, 374, 400)
                .line(400, 365, 442, 365, 442, 393)
                .circle(442, 403, 5)
                .line(434, 405, 442, 393, 450, 405)
                .line(442, 408, 439, 409, 445, 412, 439, 415, 445, 418, 442, 420)
                .line(442, 408, 442, 435, 400, 435)
                .pen(1, 4, 2.5)
                .line(374, 400, 426, 400)
                .text(456, 426, "1Z1")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1Z1", "1V2 - 1Z1");
        assertThat(Said.component(r, "1Z1").kind()).isEqualTo(Kind.FILTER);
    }

    @Test
    void eachWithItsOwnDesignationTheyAreTwo() {
        SheetReading r = throttle().text(440, 403, "1V5").text(365, 403, "1V4").read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V4 - 1V5", "1V2 - 1V4 - 1V5");
    }
}
