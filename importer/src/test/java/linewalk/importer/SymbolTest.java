package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Kind;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines and motifs to parts: what belongs to a symbol is no line work, and lines meet it at its ports. */
class SymbolTest {

    private static void is(Drawn d, String tag, double x0, double y0, double x1, double y1) {
        SheetReading r = d.read();
        assertThat(Said.tags(r)).containsExactly(tag);
        Component c = r.components().get(0);
        assertThat(c.box().grow(2).contains(new Box(x0, y0, x1, y1)))
                .as("box " + c.box())
                .isTrue();
        assertThat(new Box(x0, y0, x1, y1).grow(2).contains(c.box()))
                .as("box " + c.box())
                .isTrue();
        assertThat(r.lines()).isEmpty();
    }

    @Test
    void aRowOfSquaresIsOneValve() {
        Drawn d = Drawn.page()
                .rect(300, 300, 340, 340)
                .rect(340, 300, 380, 340)
                .rect(380, 300, 420, 340)
                .text(300, 292, "1V1");

        is(d, "1V1", 300, 300, 420, 340);
    }

    @Test
    void squaresOfSingleStrokesToo() {
        Drawn d = Drawn.page()
                .rectInPieces(300, 300, 340, 340)
                .rectInPieces(340, 300, 380, 340)
                .text(300, 292, "1V1");

        is(d, "1V1", 300, 300, 380, 340);
    }

    @Test
    void arrowsInsideASquareBelongToIt() {
        Drawn d = Drawn.page()
                .rect(300, 300, 340, 340)
                .rect(340, 300, 380, 340)
                .line(310, 340, 310, 300)
                .filled(307, 308, 313, 308, 310, 300)
                .line(330, 300, 330, 340)
                .line(350, 340, 370, 300)
                .text(300, 292, "1V1");

        is(d, "1V1", 300, 300, 380, 340);
    }

    @Test
    void aSpringAndASolenoidBelongToTheValve() {
        Drawn d = Drawn.page()
                .rect(300, 300, 340, 340)
                .rect(340, 300, 380, 340)
                .line(380, 320, 384, 312, 388, 328, 392, 312, 396, 328, 400, 320)
                .rect(280, 310, 300, 330)
                .line(285, 330, 295, 310)
                .text(320, 292, "1V1");

        is(d, "1V1", 280, 300, 400, 340);
    }

    /** Else its pilot line would go on around it, back to the valve. */
    @Test
    void aStageOfThreeSidesOnAValveIsPartOfIt() {
        Drawn d = Drawn.page()
                .rect(300, 300, 340, 340)
                .line(320, 260, 320, 300)
                .line(320, 340, 320, 380)
                .line(340, 334, 358, 334, 358, 306, 340, 306)
                .line(349, 306, 349, 260, 500, 260)
                .text(300, 292, "0V3");

        assertThat(d.read().lines()).isNotEmpty().allSatisfy(l -> assertThat(
                        l.ends().stream().filter(e -> e instanceof End.AtPort))
                .hasSize(1));
    }

    @Test
    void aCheckValveIsABallInASeat() {
        SheetReading r = Drawn.page()
                .circle(400, 400, 8)
                .line(388, 396, 400, 412, 412, 396)
                .text(420, 403, "1V3")
                .line(400, 392, 400, 300)
                .line(400, 412, 400, 520)
                .rect(380, 260, 420, 300)
                .text(430, 283, "1V1")
                .rect(380, 520, 420, 560)
                .text(430, 543, "1V2")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V3", "1V2 - 1V3");
    }

    @Test
    void aThrottleIsTwoArcs() {
        SheetReading r = Drawn.page()
                .arc(386, 388, 386, 412)
                .arc(414, 412, 414, 388)
                .text(420, 391, "1V4")
                .line(400, 300, 400, 500)
                .rect(380, 260, 420, 300)
                .text(430, 283, "1V1")
                .rect(380, 500, 420, 540)
                .text(430, 523, "1V2")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V4", "1V2 - 1V4");
    }

    @Test
    void aReservoirOfOneStroke() {
        SheetReading r = Drawn.page()
                .rect(380, 260, 420, 300)
                .text(430, 283, "1V1")
                .line(400, 300, 400, 510)
                .line(360, 500, 360, 530, 440, 530, 440, 500)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - TANK");
    }

    @Test
    void aReservoirOfThreeStrokes() {
        SheetReading r = Drawn.page()
                .rect(380, 260, 420, 300)
                .text(430, 283, "1V1")
                .line(400, 300, 400, 510)
                .line(360, 500, 360, 530)
                .line(360, 530, 440, 530)
                .line(440, 500, 440, 530)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - TANK");
    }

    @Test
    void eachReservoirSymbolIsOneAndATaggedOneKeepsItsName() {
        SheetReading r = Drawn.page()
                .line(160, 200, 160, 245)
                .line(150, 235, 150, 250, 170, 250, 170, 235)
                .line(360, 300, 360, 510)
                .line(300, 500, 300, 530, 440, 530, 440, 500)
                .text(350, 545, "0Z1")
                .rect(140, 160, 180, 200)
                .text(190, 183, "1V1")
                .rect(340, 260, 380, 300)
                .text(390, 283, "1V2")
                .read();

        assertThat(Said.lines(r)).containsExactly("0Z1 - 1V2", "1V1 - TANK");
    }

    /** Its name says so, and the pipe ends inside. */
    @Test
    void aClosedReservoir() {
        SheetReading r = Drawn.page()
                .rect(380, 260, 420, 300)
                .text(430, 283, "1V1")
                .line(400, 300, 400, 580)
                .rect(200, 500, 700, 600)
                .text(500, 560, "TANK")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - TANK");
        assertThat(r.components().stream().filter(c -> c.tag().equals("TANK")))
                .singleElement()
                .satisfies(c -> assertThat(c.ports().get(0).place().yPt()).isCloseTo(580, within(1.0)));
    }

    @Test
    void aBoxWithALidIsNoReservoir() {
        SheetReading r = Drawn.page()
                .rect(380, 260, 420, 300)
                .text(430, 283, "1V1")
                .line(400, 300, 400, 500)
                .rect(360, 500, 440, 530)
                .text(450, 520, "1V2")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2");
    }

    /** In three strokes of two pens, open towards the ball or away from it: no reservoir, though a line ends in it. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aGaugeOnTheCapOfItsTestPoint(boolean towards) {
        double rim = towards ? 303 : 293;
        SheetReading r = Drawn.page()
                .rect(380, 480, 420, 520)
                .text(430, 503, "1V1")
                .line(400, 480, 400, 316)
                .line(393, 309, 400, 316, 407, 309)
                .circle(400, 308, 4.5)
                .text(415, 310, "1Z9")
                .pen(1.4)
                .line(392, 299, 408, 299)
                .pen(1)
                .line(392, 299, 392, rim)
                .line(408, 299, 408, rim)
                .line(400, 299, 400, 255)
                .circle(400, 240, 15)
                .line(390, 250, 408, 232)
                .filled(410, 230, 407, 236, 404, 233)
                .text(422, 243, "1Z10")
                .read();

        assertThat(Said.lines(r)).containsExactlyInAnyOrder("1V1 - 1Z9", "1Z10 - 1Z9");
        assertThat(Said.component(r, "1Z9").kind()).isEqualTo(Kind.TEST_POINT);
        assertThat(Said.component(r, "1Z10").kind()).isEqualTo(Kind.GAUGE);
    }

    /** A program's own pieces: the lines that end on the ring do not part it. */
    @Test
    void aRingOfShortPiecesOnWhichLinesEnd() {
        Drawn d = Drawn.page();
        for (int i = 0; i < 48; i++) {
            double a = Math.PI * i / 24;
            double b = Math.PI * (i + 1) / 24;
            d.line(400 + 24 * Math.cos(a), 300 + 24 * Math.sin(a), 400 + 24 * Math.cos(b), 300 + 24 * Math.sin(b));
        }
        SheetReading r = d.filled(400, 276, 392, 289, 408, 289)
                .line(400, 276, 400, 200)
                .line(400, 324, 400, 400)
                .line(300, 297, 376.2, 297)
                .line(300, 303, 376.2, 303)
                .text(430, 303, "P1")
                .read();

        assertThat(Said.component(r, "P1").kind()).isEqualTo(Kind.PUMP);
    }

    /** The coupling under a gauge hangs on a short stub and has no name of its own. */
    @Test
    void aGaugeOnItsCouplingIsOnePart() {
        SheetReading r = Drawn.page()
                .circle(400, 300, 16)
                .line(394, 308, 406, 292)
                .text(420, 303, "0Z5")
                .line(400, 316, 400, 326)
                .circle(400, 331, 5)
                .line(400, 336, 400, 500)
                .rect(380, 500, 420, 540)
                .text(430, 523, "1V1")
                .read();

        assertThat(Said.lines(r)).containsExactly("0Z5 - 1V1");
        assertThat(Said.component(r, "0Z5").ports()).hasSize(1);
    }

    @Test
    void anOutlineWithoutANameAndATextWithoutAnOutlineAreNoParts() {
        assertThat(Drawn.page().rect(300, 300, 340, 340).read().components()).isEmpty();
        assertThat(Drawn.page().text(300, 300, "1V1").read().components()).isEmpty();
    }

    @Test
    void linesThatMeetAPortTogetherShareIt() {
        SheetReading r = Drawn.page()
                .rect(380, 380, 420, 420)
                .text(430, 403, "1V1")
                .line(400, 420, 400, 600)
                .text(404, 608, "2.B4")
                .line(380, 400, 200, 400)
                .text(170, 403, "3.C1")
                .read();

        assertThat(Said.component(r, "1V1").ports()).hasSize(2);
        assertThat(Said.lines(r)).containsExactly("1V1 - to 2/B4", "1V1 - to 3/C1");
    }

    /** The plate at the end of a brake's rod is nearer to the designation than the brake's box, and no part of its own. */
    @Test
    void aBrakeWithItsShoe() {
        SheetReading r = Drawn.page()
                .rect(300, 280, 360, 320)
                .line(335, 280, 335, 320)
                .line(340, 280, 340, 320)
                .line(340, 298, 380, 298)
                .line(340, 302, 380, 302)
                .rect(380, 286, 385, 314)
                .text(392, 303, "1A4")
                .rect(500, 400, 540, 440)
                .text(550, 423, "1V1")
                .line(350, 320, 350, 420, 500, 420)
                .read();

        assertThat(Said.lines(r)).containsExactly("1A4 - 1V1");
    }

    /** Its leader, in a pen of its own, touches the seat with its tip. */
    @Test
    void aSeatAtWhichABalloonsLeaderPointsStaysWithItsBall() {
        SheetReading r = Drawn.page()
                .rect(280, 580, 320, 620)
                .text(240, 603, "1V1")
                .rect(280, 280, 320, 320)
                .text(240, 303, "1V3")
                .line(300, 580, 300, 457.7)
                .line(300, 440.7, 300, 320)
                .circle(300, 446.7, 6)
                .line(291.2, 444.5, 300, 457.7, 308.8, 444.5)
                .text(270, 455, "1V2")
                .circle(340, 423, 9)
                .text(337, 426, "6")
                .pen(0.5)
                .line(332.7, 428.2, 309, 445)
                .filled(309, 445, 313.2, 438.8, 316.2, 443.1)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2", "1V2 - 1V3");
    }

    @Test
    void aStrainerInAReservoirHasLinesOfItsOwn() {
        SheetReading r = Drawn.page()
                .line(200, 400, 200, 600, 500, 600, 500, 400)
                .text(210, 590, "TANK")
                .polygon(300, 480, 320, 500, 300, 520, 280, 500)
                .text(330, 503, "0Z1")
                .line(300, 520, 300, 560)
                .line(300, 480, 300, 300)
                .rect(280, 260, 320, 300)
                .text(330, 283, "1V1")
                .read();

        assertThat(Said.lines(r)).containsExactly("0Z1 - 1V1", "0Z1 - TANK");
    }
}
