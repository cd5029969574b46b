package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** Strokes that look like line work and carry no oil. */
class NotLineTest {

    private static Drawn pumpAndMotor() {
        return Drawn.page()
                .circle(300, 400, 25)
                .text(290, 368, "0M1")
                .circle(400, 400, 25)
                .text(390, 368, "0P1");
    }

    @Test
    void aLeaderFromANoteToAPart() {
        SheetReading r = Drawn.page()
                .rect(200, 280, 240, 320)
                .text(205, 272, "1V2")
                .line(240, 300, 270, 260, 300, 260)
                .text(304, 263, "SEE NOTE 4")
                .read();

        assertThat(r.lines()).isEmpty();
        assertThat(Said.tags(r)).containsExactly("1V2");
    }

    @Test
    void aLeaderFromABubbleToALine() {
        SheetReading r = Drawn.page()
                .rect(180, 380, 220, 420)
                .text(180, 374, "1V1")
                .rect(580, 380, 620, 420)
                .text(580, 374, "1V2")
                .line(220, 400, 580, 400)
                .circle(450, 330, 14)
                .line(436, 330, 464, 330)
                .text(447, 326, "7")
                .text(447, 341, "P")
                .line(442, 342, 400, 400)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2");
    }

    /** A pump's own control line leaves it close beside the outlet: the two are no shaft. */
    @Test
    void noControlLineBesideTheOutlet() {
        SheetReading r = Drawn.page()
                .circle(400, 400, 25)
                .filled(400, 375, 394, 385, 406, 385)
                .text(340, 380, "0P1")
                .rect(380, 280, 420, 320)
                .text(430, 303, "1V1")
                .line(400, 375, 400, 320)
                .pen(0.7, 3, 2)
                .line(397, 375.2, 397, 369, 355, 369, 355, 430)
                .read();

        assertThat(Said.lines(r)).contains("0P1 - 1V1");
    }

    /** Float and rod of sensors in a reservoir. */
    @Test
    void whatHangsIntoAReservoir() {
        SheetReading r = Drawn.page()
                .line(300, 400, 300, 500, 700, 500, 700, 400)
                .text(310, 492, "TANK")
                .rect(390, 280, 410, 300)
                .text(414, 294, "B1")
                .line(400, 300, 400, 444)
                .circle(400, 450, 6)
                .line(386, 450, 394, 450)
                .line(406, 450, 414, 450)
                .rect(580, 280, 620, 320)
                .text(624, 303, "1V1")
                .line(600, 320, 600, 460)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - TANK");
        assertThat(Said.component(r, "TANK").ports()).hasSize(1);
    }

    /** ISO 1219-1: a shaft is a double line between motor and pump. */
    @Test
    void aShaft() {
        SheetReading r =
                pumpAndMotor().line(325, 398, 375, 398).line(325, 402, 375, 402).read();

        assertThat(r.lines()).isEmpty();
        assertThat(Said.tags(r)).containsExactly("0M1", "0P1");
    }

    @Test
    void aLineBesideAShaftStays() {
        SheetReading r = pumpAndMotor()
                .line(325, 398, 375, 398)
                .line(325, 402, 375, 402)
                .line(400, 375, 400, 200, 600, 200)
                .text(604, 203, "2.B4")
                .read();

        assertThat(Said.lines(r)).containsExactly("0P1 - to 2/B4");
    }

    @Test
    void rulesOfATable() {
        Drawn d = Drawn.page();
        for (int i = 0; i <= 3; i++) {
            d.line(600, 300 + 15 * i, 760, 300 + 15 * i);
        }
        d.line(600, 300, 600, 345).line(660, 300, 660, 345).line(760, 300, 760, 345);
        for (int i = 0; i < 3; i++) {
            d.text(605, 311 + 15 * i, "1V" + (i + 1)).text(665, 311 + 15 * i, "CHECK VALVE");
        }

        SheetReading r = d.read();

        assertThat(r.lines()).isEmpty();
        assertThat(r.components()).isEmpty();
    }

    /** A relief valve senses its own inlet: the dashed way around its corner is part of the symbol. */
    @Test
    void aValvesOwnPilotLoop() {
        SheetReading r = Drawn.page()
                .rect(380, 380, 420, 420)
                .text(430, 403, "1V1")
                .rect(380, 580, 420, 620)
                .text(430, 603, "1V2")
                .line(400, 420, 400, 580)
                .pen(0.7, 3, 2)
                .line(400, 432, 370, 432, 370, 400, 380, 400)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2");
        assertThat(Said.component(r, "1V1").ports()).hasSize(1);
    }

    @Test
    void aValvesOwnPilotLoopOffADashedLine() {
        SheetReading r = Drawn.page()
                .rect(380, 380, 420, 420)
                .text(430, 403, "1V1")
                .rect(380, 580, 420, 620)
                .text(430, 603, "1V2")
                .pen(0.7, 6, 3)
                .line(400, 420, 400, 580)
                .pen(0.7, 3, 2)
                .line(400, 432, 370, 432, 370, 400, 380, 400)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2");
        assertThat(Said.component(r, "1V1").ports()).hasSize(1);
    }

    /** A pilot line starts beside the box and bends around its corner; this one leaves out of a port. */
    @Test
    void butNoDashedLineOnTheOtherSideOfThePart() {
        SheetReading r = Drawn.page()
                .rect(380, 380, 420, 420)
                .text(340, 403, "1V1")
                .line(400, 380, 400, 350, 450, 350, 450, 436, 400, 436)
                .pen(0.7, 3, 2)
                .line(400, 420, 400, 436)
                .pen(1)
                .line(450, 436, 700, 436)
                .rect(700, 420, 740, 460)
                .text(750, 443, "1V2")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V1 - 1V2");
    }

    /** A dashed way between two pipes of one reservoir is a drain line that joins the other. */
    @Test
    void butNoDrainIntoAReservoir() {
        SheetReading r = Drawn.page()
                .line(200, 400, 200, 500, 400, 500, 400, 400)
                .rect(500, 200, 540, 240)
                .text(550, 223, "1V1")
                .line(500, 220, 250, 220, 250, 450)
                .pen(0.7, 3, 2)
                .line(300, 220, 300, 450)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - TANK - TANK");
    }

    /** ISO 1219-1: short arrows at a cooler's sides mean heat. */
    @Test
    void aCoolersHeatArrows() {
        SheetReading r = Drawn.page()
                .polygon(400, 380, 420, 400, 400, 420, 380, 400)
                .text(424, 385, "0Z4")
                .line(410, 390, 422, 378)
                .filled(422, 378, 417, 380, 420, 383)
                .line(420, 400, 600, 400)
                .text(604, 403, "2.B4")
                .read();

        assertThat(Said.lines(r)).containsExactly("0Z4 - to 2/B4");
        assertThat(Said.component(r, "0Z4").ports()).hasSize(1);
    }

    @Test
    void aBorderAroundTheDrawing() {
        assertThat(Drawn.page().rect(40, 40, 1150, 800).read().lines()).isEmpty();
    }

    @Test
    void lineWorkThatReachesNothing() {
        assertThat(Drawn.page().line(200, 200, 600, 200, 600, 400).read().lines())
                .isEmpty();
    }

    /** A level switch over the reservoir; the strainer beside it, named alike, goes on to a pump. */
    @Test
    void norTheRodOfASensorInTheTank() {
        SheetReading r = Drawn.page()
                .line(300, 500, 300, 600, 700, 600, 700, 500)
                .text(480, 620, "TANK")
                .rect(380, 380, 420, 420)
                .text(424, 384, "S1")
                .line(400, 420, 400, 560)
                .polygon(600, 440, 620, 460, 600, 480, 580, 460)
                .text(624, 455, "S2")
                .line(600, 480, 600, 560)
                .line(600, 440, 600, 380)
                .circle(600, 360, 20)
                .text(624, 364, "P1")
                .read();

        assertThat(Said.component(r, "S1").ports()).isEmpty();
        assertThat(Said.lines(r)).containsExactlyInAnyOrder("P1 - S2", "S2 - TANK");
    }
}
