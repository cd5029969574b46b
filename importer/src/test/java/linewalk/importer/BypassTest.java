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

    /** Between the same two dots; the name stands nearer to the indicator than to the filter. */
    @Test
    void aFilterWithAWayAroundItAndAnIndicator() {
        SheetReading r = Drawn.page()
                .rect(180, 380, 220, 420)
                .text(190, 374, "1V1")
                .rect(580, 380, 620, 420)
                .text(590, 374, "1V2")
                .line(220, 400, 374, 400)
                .line(426, 400, 580, 400)
                .polygon(374, 400, 400, 374, 426, 400, 400, 426)
                .dot(360, 400)
                .dot(440, 400)
                .line(360, 400, 360, 360, 392, 360)
                .circle(400, 360, 5)
                .line(402, 350, 392, 360, 402, 370)
                .line(405, 360, 440, 360, 440, 400)
                .line(360, 400, 360, 442, 390, 442)
                .circle(400, 442, 10)
                .line(394, 448, 406, 436)
                .line(410, 442, 440, 442, 440, 400)
                .pen(1, 4, 2.5)
                .line(400, 374, 400, 426)
                .text(392, 468, "1Z1")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1Z1", "1V2 - 1Z1");
        assertThat(Said.component(r, "1Z1").kind()).isEqualTo(Kind.FILTER);
        assertThat(Said.tags(r)).containsExactlyInAnyOrder("1V1", "1V2", "1Z1");
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

    /** The valve's own pilot line leaves between the two ways; its drain goes elsewhere. */
    @Test
    void aPressureValveThatIsDrainedAndTheCheckBesideIt() {
        SheetReading r = Drawn.page()
                .rect(380, 180, 420, 220)
                .text(340, 203, "1V1")
                .rect(380, 580, 420, 620)
                .text(340, 603, "1V2")
                .rect(500, 580, 540, 620)
                .text(545, 603, "1V3")
                .line(400, 220, 400, 386)
                .rect(386, 386, 414, 414)
                .line(400, 414, 400, 580)
                .line(400, 413, 400, 392)
                .filled(400, 388, 402, 393, 398, 393)
                .line(414, 400, 415.5, 396, 418.5, 404, 421.5, 396, 424.5, 404, 427.5, 396, 430, 400)
                .line(400, 372, 366, 372, 366, 394.5)
                .line(366, 404, 366, 428, 400, 428)
                .line(366, 394.5, 359, 401)
                .line(366, 394.5, 373, 401)
                .circle(366, 400, 4)
                .pen(0.7, 5, 2)
                .line(400, 379, 380, 379, 380, 400, 386, 400)
                .pen(0.7, 3, 2)
                .line(414, 409, 520, 409, 520, 580)
                .text(436, 396, "1V5")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V5", "1V2 - 1V5", "1V3 - 1V5");
        assertThat(Said.component(r, "1V5").kind()).isEqualTo(Kind.REDUCING_VALVE);
    }

    /** Its name stands nearer to the check; the dashes of its own pilot line were fitted to short legs, one by one. */
    @Test
    void aReliefThatIsNamedBesideItsCheck() {
        SheetReading r = Drawn.page()
                .rect(380, 180, 420, 220)
                .text(340, 203, "1V1")
                .rect(380, 580, 420, 620)
                .text(340, 603, "1V2")
                .line(400, 220, 400, 386)
                .rect(386, 386, 414, 414)
                .line(400, 414, 400, 580)
                .line(405, 387, 405, 408)
                .filled(405, 413, 407, 408, 403, 408)
                .line(386, 400, 384.5, 396, 381.5, 404, 378.5, 396, 375.5, 404, 372.5, 396, 370, 400)
                .line(400, 362, 350, 362, 350, 394.5)
                .line(350, 404, 350, 438, 400, 438)
                .line(350, 404, 343, 397)
                .line(350, 404, 357, 397)
                .circle(350, 400, 4)
                .pen(0.7)
                .line(400, 376, 404, 376)
                .line(407, 376, 411, 376)
                .line(414, 376, 418, 376)
                .line(421, 376, 425, 376, 425, 383)
                .line(425, 386, 425, 393)
                .line(425, 393, 421, 393)
                .line(418, 393, 414, 393)
                .text(318, 403, "1V5")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V5", "1V2 - 1V5");
        assertThat(Said.component(r, "1V5").ports()).hasSize(2);
        assertThat(Said.component(r, "1V5").kind()).isNotEqualTo(Kind.CHECK_VALVE);
    }

    /** Ways on both sides meet the line at one place: four ends, and no doubt that they join. */
    @Test
    void aFilterWithWaysOnBothItsSides() {
        SheetReading r = Drawn.page()
                .rect(380, 180, 420, 220)
                .text(340, 203, "1V1")
                .rect(380, 580, 420, 620)
                .text(340, 603, "1V2")
                .line(400, 220, 400, 374)
                .line(400, 426, 400, 580)
                .polygon(400, 374, 426, 400, 400, 426, 374, 400)
                .line(400, 362, 442, 362, 442, 394)
                .circle(442, 399, 5)
                .line(434, 397, 442, 406, 450, 397)
                .line(442, 406, 442, 438, 400, 438)
                .line(400, 362, 358, 362, 358, 392)
                .circle(358, 400, 8)
                .line(353, 405, 363, 395)
                .line(358, 408, 358, 438, 400, 438)
                .pen(1, 4, 2.5)
                .line(374, 400, 426, 400)
                .text(460, 403, "1Z1")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1Z1", "1V2 - 1Z1");
        assertThat(r.lines()).allMatch(l -> l.confidence() > 0.9);
    }

    /** A balloon points at the throttle, the designation stands beside the check. */
    @Test
    void anItemNumberIsNoDesignation() {
        SheetReading r = throttle()
                .text(440, 403, "1V5")
                .circle(340, 440, 10)
                .text(334, 443, "52")
                .line(348, 433, 391, 402)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V5", "1V2 - 1V5");
        assertThat(Said.tags(r)).containsExactlyInAnyOrder("1V1", "1V2", "1V5");
    }

    @Test
    void eachWithItsOwnDesignationTheyAreTwo() {
        SheetReading r = throttle().text(440, 403, "1V5").text(365, 403, "1V4").read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V4 - 1V5", "1V2 - 1V4 - 1V5");
    }
}
