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

    @Test
    void eachWithItsOwnDesignationTheyAreTwo() {
        SheetReading r = throttle().text(440, 403, "1V5").text(365, 403, "1V4").read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V4 - 1V5", "1V2 - 1V4 - 1V5");
    }
}
