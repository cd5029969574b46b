package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Kind;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** Hoses, plates and numbers in balloons: what a person sees as a part though no closed outline says so. */
class PartsWithoutOutlineTest {

    private static Drawn twoValves() {
        return Drawn.page()
                .rect(200, 280, 240, 320)
                .text(200, 274, "1V1")
                .rect(600, 280, 640, 320)
                .text(600, 274, "1V2");
    }

    @Test
    void aHeavierPieceBetweenBarsIsAHoseWhereItHasADesignation() {
        SheetReading r = twoValves()
                .line(240, 300, 350, 300)
                .line(350, 295, 350, 305)
                .line(354, 295, 354, 305)
                .line(354, 300, 446, 300)
                .line(446, 295, 446, 305)
                .line(450, 295, 450, 305)
                .line(450, 300, 600, 300)
                .text(390, 320, "1H1")
                .read();

        assertThat(Said.tags(r)).contains("1H1");
        assertThat(Said.lines(r)).containsExactlyInAnyOrder("1H1 - 1V1", "1H1 - 1V2");
    }

    /** Its fittings are rings. */
    @Test
    void aCurveBetweenTwoRingsIsAHose() {
        SheetReading r = twoValves()
                .line(240, 300, 350, 300)
                .circle(350, 300, 3)
                .curve(350, 300, 380, 276, 420, 276, 450, 300)
                .circle(450, 300, 3)
                .line(450, 300, 600, 300)
                .text(390, 320, "1H1")
                .read();

        assertThat(Said.lines(r)).containsExactlyInAnyOrder("1H1 - 1V1", "1H1 - 1V2");
        assertThat(Said.component(r, "1H1").kind()).isEqualTo(Kind.HOSE);
    }

    /** Leaders end in the figures; the names of coils and pipes stand nearer than the balloons. */
    @Test
    void whereMostPartsHaveNumbersAloneNumbersAreTheNames() {
        SheetReading r = Drawn.page()
                .circle(300, 300, 20)
                .circle(360, 240, 10)
                .line(353, 247, 305, 295)
                .text(353, 243, "210")
                .rect(380, 280, 420, 320)
                .circle(460, 240, 10)
                .line(453, 247, 405, 295)
                .text(453, 243, "211")
                .rect(480, 280, 520, 320)
                .text(490, 335, "XA2")
                .circle(560, 240, 10)
                .line(553, 247, 505, 295)
                .text(553, 243, "212")
                .line(320, 300, 380, 300)
                .line(420, 300, 480, 300)
                .read();

        assertThat(Said.lines(r)).containsExactly("210 - 211", "211 - 212");
    }

    @Test
    void aNumberInABalloonNamesWhatItPointsAt() {
        SheetReading r = twoValves()
                .rect(400, 280, 440, 320)
                .line(240, 300, 400, 300)
                .line(440, 300, 600, 300)
                .circle(480, 400, 10)
                .text(477, 403, "7")
                .line(473, 393, 442, 322)
                .read();

        assertThat(Said.lines(r)).containsExactlyInAnyOrder("1V1 - 7", "1V2 - 7");
        assertThat(Said.component(r, "7").confidence()).isLessThan(0.9);
    }

    @Test
    void aDimensionIsNoLine() {
        SheetReading r = twoValves()
                .line(240, 300, 600, 300)
                .line(200, 320, 200, 360)
                .line(640, 320, 640, 360)
                .line(200, 355, 640, 355)
                .filled(200, 355, 208, 352, 208, 358)
                .filled(640, 355, 632, 352, 632, 358)
                .text(415, 351, "440")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2");
        assertThat(Said.component(r, "1V1").ports()).hasSize(1);
    }
}
