package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import linewalk.drawing.Kind;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** How drafters of other offices draw what everybody draws: each case is one habit. */
class DraftersHabitsTest {

    private static Drawn twoValves() {
        return Drawn.page()
                .rect(200, 280, 240, 320)
                .text(200, 274, "1V1")
                .rect(600, 280, 640, 320)
                .text(600, 274, "1V2");
    }

    /** Every side a stroke of its own; the head's pen is thinner, and it lies on a side of the square. */
    @Test
    void aThinHeadBesideSquaresOfThePipesPen() {
        SheetReading r = Drawn.page()
                .pen(1.3)
                .line(200, 280, 240, 280)
                .line(240, 280, 240, 320)
                .line(240, 320, 200, 320)
                .line(200, 280, 200, 320)
                .line(240, 280, 280, 280)
                .line(280, 280, 280, 320)
                .line(280, 320, 240, 320)
                .line(220, 320, 220, 400)
                .pen(0.7)
                .line(200, 300, 180, 300)
                .line(180, 300, 180, 320)
                .line(180, 320, 200, 320)
                .line(200, 320, 200, 300)
                .text(210, 274, "1V1")
                .read();

        assertThat(r.components()).singleElement().satisfies(c -> {
            assertThat(c.tag()).isEqualTo("1V1");
            assertThat(c.ports()).hasSize(1);
            assertThat(c.box().x1Pt()).isCloseTo(280, within(1.0));
        });
    }

    /** A line that hops over another beside the other's number is no hose. */
    @Test
    void aHoppingLineBesideANameIsALine() {
        SheetReading r = twoValves()
                .hopping(240, 400, 600, 300)
                .rect(380, 180, 420, 220)
                .text(380, 174, "1V3")
                .rect(380, 380, 420, 420)
                .text(410, 312, "1V4")
                .line(400, 220, 400, 380)
                .read();

        assertThat(Said.lines(r)).contains("1V1 - 1V2");
    }

    /** Its own dot ends the hose where the line begins. */
    @Test
    void aHoseOfChordsBetweenTwoDots() {
        Drawn d = twoValves().line(240, 300, 380, 300).line(460, 300, 600, 300);
        double[] arc = new double[2 * 21];
        for (int i = 0; i <= 20; i++) {
            arc[2 * i] = 380 + 4 * i;
            arc[2 * i + 1] = 300 + 14 * Math.sin(Math.PI * i / 20);
        }
        SheetReading r = d.line(arc)
                .dot(380, 300, 3)
                .dot(460, 300, 3)
                .text(405, 330, "1H1")
                .read();

        assertThat(Said.lines(r)).containsExactlyInAnyOrder("1H1 - 1V1", "1H1 - 1V2");
    }

    /** It leaves its line hardly turned, but between dots. */
    @Test
    void aFlatHoseBetweenTwoDots() {
        SheetReading r = twoValves()
                .line(240, 300, 380, 300)
                .line(460, 300, 600, 300)
                .curve(380, 300, 400, 292, 440, 292, 460, 300)
                .dot(380, 300, 2)
                .dot(460, 300, 2)
                .text(405, 320, "H1")
                .read();

        assertThat(Said.lines(r)).containsExactlyInAnyOrder("1V1 - H1", "1V2 - H1");
    }

    /** The flag is so near that all of the line lies beside the symbol. */
    @Test
    void aShortLineToAFlagIsNoMarkOfTheSymbolItStartsAt() {
        SheetReading r = Drawn.page()
                .rect(400, 240, 500, 274)
                .line(450, 240, 450, 274)
                .line(450, 254, 530, 254, 530, 260, 450, 260)
                .text(405, 232, "C3")
                .line(485, 274, 485, 310, 494, 310)
                .flag(524, 304, 494, 316)
                .text(502, 313, "3/B8")
                .read();

        assertThat(Said.lines(r)).containsExactly("C3 - to 3/B8");
    }

    /** Names at flags are of other letters: what stands over the valve's end and under a line is the valve's. */
    @Test
    void aDesignationBelowALineOfAnotherPart() {
        SheetReading r = Drawn.page()
                .line(200, 300, 340, 300)
                .flag(160, 294, 200, 306)
                .text(166, 303, "2/B1")
                .text(140, 303, "P2")
                .line(200, 400, 300, 400)
                .flag(160, 394, 200, 406)
                .text(166, 403, "2/C1")
                .text(140, 403, "T3")
                .rect(300, 380, 340, 420)
                .text(316, 312, "V5")
                .rect(310, 318, 330, 338)
                .text(345, 403, "V6")
                .read();

        assertThat(Said.tags(r)).containsExactlyInAnyOrder("V5", "V6");
    }

    /** The lines were drawn on beneath the balls and their seats. */
    @Test
    void twoPilotChecksInOneBlock() {
        Drawn d = Drawn.page().rect(350, 280, 450, 340);
        for (double x : new double[] {375, 425}) {
            d.line(x, 240, x, 380)
                    .circle(x, 305, 4.3)
                    .line(x, 311, x - 6.5, 304.5)
                    .line(x, 311, x + 6.5, 304.5)
                    .rect(x - 15, 200, x + 15, 240)
                    .rect(x - 15, 380, x + 15, 420);
        }
        SheetReading r = d.text(340, 203, "1V1")
                .text(445, 203, "1V2")
                .text(340, 403, "1V3")
                .text(445, 403, "1V4")
                .pen(0.7, 5, 2)
                .line(375, 328, 410, 328, 410, 305, 420.7, 305)
                .line(425, 320, 390, 320, 390, 305, 379.3, 305)
                .text(455, 308, "1V5")
                .read();

        assertThat(Said.component(r, "1V5").kind()).isEqualTo(Kind.PILOT_CHECK_VALVE);
        assertThat(Said.component(r, "1V5").ports()).hasSize(4);
        assertThat(Said.component(r, "1V5").positions())
                .extracting(p -> p.passages().size())
                .containsExactly(2, 2);
    }

    @Test
    void aDividerInABox() {
        SheetReading r = twoValves()
                .rect(350, 380, 430, 440)
                .line(390, 440, 390, 520)
                .line(390, 440, 390, 425)
                .line(365, 425, 415, 425)
                .line(365, 425, 365, 380)
                .line(415, 425, 415, 380)
                .line(240, 300, 365, 300, 365, 380)
                .line(600, 300, 415, 300, 415, 380)
                .curve(357, 394, 363, 398, 363, 410, 357, 414)
                .curve(373, 394, 367, 398, 367, 410, 373, 414)
                .curve(407, 394, 413, 398, 413, 410, 407, 414)
                .curve(423, 394, 417, 398, 417, 410, 423, 414)
                .rect(370, 520, 410, 560)
                .text(415, 543, "1V3")
                .text(440, 413, "1V4")
                .read();

        assertThat(Said.lines(r)).containsExactlyInAnyOrder("1V1 - 1V4", "1V2 - 1V4", "1V3 - 1V4");
        assertThat(Said.component(r, "1V4").kind()).isEqualTo(Kind.FLOW_DIVIDER);
        assertThat(Said.component(r, "1V4").positions()).singleElement().satisfies(p -> assertThat(p.passages())
                .hasSize(2));
    }

    /** A leader that ends where an arm of the seat does. */
    @Test
    void aBalloonsLeaderAtTheSeat() {
        SheetReading r = twoValves()
                .line(240, 300, 389.5, 300)
                .circle(400, 300, 7)
                .line(403.4, 313.2, 389.5, 300, 403.4, 286.8)
                .line(407, 300, 600, 300)
                .circle(450, 250, 12)
                .text(446, 253, "4")
                .line(440.5, 257.5, 404, 287)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 4", "1V2 - 4");
        assertThat(Said.component(r, "4").kind()).isEqualTo(Kind.CHECK_VALVE);
    }

    /** The lines end in the corners, so that no side goes on into the next. */
    @Test
    void aCoolerOfFourSingleSides() {
        SheetReading r = twoValves()
                .line(240, 300, 375, 300)
                .line(425, 300, 600, 300)
                .line(375, 300, 400, 275)
                .line(400, 275, 425, 300)
                .line(425, 300, 400, 325)
                .line(400, 325, 375, 300)
                .line(400, 275, 400, 325)
                .filled(400, 275, 396, 283, 404, 283)
                .filled(400, 325, 396, 317, 404, 317)
                .text(430, 285, "1Z1")
                .read();

        assertThat(Said.component(r, "1Z1").kind()).isEqualTo(Kind.COOLER);
        assertThat(Said.lines(r)).containsExactly("1V1 - 1Z1", "1V2 - 1Z1");
    }

    /** The suction line is short against the tank, and the pump has no name of its own. */
    @Test
    void whatHangsOnATankIsNoPartOfIt() {
        SheetReading r = Drawn.page()
                .line(200, 500, 200, 600, 900, 600, 900, 500)
                .text(500, 580, "TANK")
                .line(400, 560, 400, 420)
                .circle(400, 400, 20)
                .filled(400, 380, 394, 392, 406, 392)
                .line(400, 380, 400, 320)
                .rect(380, 280, 420, 320)
                .text(430, 304, "1V1")
                .read();

        assertThat(Said.lines(r)).noneMatch(l -> l.contains("1V1") && l.contains("TANK"));
    }

    /** Two brackets around a ball between the gauge and its line. */
    @Test
    void aGaugeOnACouplingOfTwoBrackets() {
        SheetReading r = Drawn.page()
                .rect(380, 480, 420, 520)
                .text(340, 503, "1V1")
                .circle(400, 400, 14)
                .line(393, 407, 407, 393)
                .filled(407, 393, 404.2, 399, 401, 395.8)
                .text(420, 403, "1S1")
                .line(400, 414, 400, 422)
                .line(395, 425, 395, 422, 405, 422, 405, 425)
                .circle(400, 427.5, 3)
                .line(395, 430, 395, 433, 405, 433, 405, 430)
                .line(400, 433, 400, 480)
                .read();

        assertThat(Said.lines(r)).containsExactly("1S1 - 1V1");
        assertThat(Said.component(r, "1S1").kind()).isEqualTo(Kind.TEST_POINT);
    }

    /** The first peak of the zigzag stands beside the line that comes in on its axis. */
    @Test
    void aSpringThatTheLineMeetsBesideItsPeak() {
        SheetReading r = Drawn.page()
                .pen(0.7)
                .rect(380, 180, 420, 220)
                .text(340, 203, "1V1")
                .rect(380, 580, 420, 620)
                .text(340, 603, "1V2")
                .line(400, 220, 400, 382.8)
                .line(403.4, 382.8, 396.6, 384.8, 403.4, 386.8, 396.6, 388.8, 403.4, 390.9, 396.6, 393)
                .circle(400, 397.5, 4.5)
                .line(392, 396, 400, 404, 408, 396)
                .line(400, 404, 400, 580)
                .text(420, 400, "1V5")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V5", "1V2 - 1V5");
    }

    /** A chevron at the end of a line that hops on its way. */
    @Test
    void anOpenArrowAtAReference() {
        SheetReading r = Drawn.page()
                .rect(200, 280, 240, 320)
                .text(205, 272, "1V2")
                .hopping(240, 400, 560, 300)
                .line(552, 295, 560, 300, 552, 305)
                .text(566, 303, "/2.B4")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V2 - to 2/B4");
    }

    /** Down, across and up again, with arrow heads at both ends and a line through its middle: no reservoir. */
    @Test
    void linesThatMeetInTheShapeOfAReservoir() {
        SheetReading r = Drawn.page()
                .line(200, 200, 200, 330, 480, 330, 480, 200)
                .line(340, 200, 340, 480)
                .dot(340, 330, 3)
                .line(196, 200, 200, 208, 204, 200)
                .line(336, 200, 340, 208, 344, 200)
                .line(476, 200, 480, 208, 484, 200)
                .text(180, 180, "FR 3")
                .text(180, 192, "C2")
                .text(320, 180, "FR 4")
                .text(320, 192, "C2")
                .text(460, 180, "FR 2")
                .text(460, 192, "B2")
                .rect(320, 480, 360, 520)
                .text(366, 503, "1V1")
                .read();

        assertThat(Said.references(r)).contains("3/C2 in", "4/C2 in", "2/B2 in");
        assertThat(Said.tags(r)).containsExactly("1V1");
    }

    /** A side of it may be another stroke than its bottom. */
    @Test
    void aReservoirInTwoStrokes() {
        SheetReading r = Drawn.page()
                .line(300, 500, 700, 500, 700, 400)
                .line(300, 500, 300, 400)
                .text(310, 492, "TANK")
                .rect(580, 280, 620, 320)
                .text(624, 303, "1V1")
                .line(600, 320, 600, 460)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - TANK");
    }

    /** The words of other languages say which way the oil goes. */
    @Test
    void aFlagWithADoubleLineInGerman() {
        SheetReading r = Drawn.page()
                .rect(200, 280, 240, 320)
                .text(205, 272, "1V2")
                .line(240, 300, 500, 300)
                .rect(500, 288, 590, 312)
                .rect(503, 291, 587, 309)
                .text(510, 303, "ZU BL.2-B4")
                .circle(605, 300, 11)
                .text(599, 303, "61")
                .read();

        assertThat(Said.references(r)).containsExactly("2/B4 out");
    }

    /** Its letter stands in a circle, and the rest so close beside it that a blank would do. */
    @Test
    void aLetterInACircleWithItsPlaceBeside() {
        SheetReading r = Drawn.page()
                .rect(200, 280, 240, 320)
                .text(205, 272, "1V2")
                .line(240, 300, 500, 300)
                .circle(510, 300, 10)
                .text(506, 303, "G")
                .text(521, 303, "/4.B12")
                .read();

        assertThat(Said.lines(r)).containsExactly("1V2 - to 4/B12");
    }

    /** What most flags have against a side is their line's number; a detail's bubble is no reference. */
    @Test
    void numbersAgainstFlags() {
        SheetReading r = Drawn.page()
                .rect(200, 180, 240, 320)
                .text(205, 172, "1V2")
                .line(240, 200, 500, 200)
                .flag(500, 186, 570, 214)
                .text(507, 198, "SH 2")
                .text(507, 209, "B-4")
                .text(510, 181, "P1-20")
                .line(240, 300, 500, 300)
                .flag(500, 286, 570, 314)
                .text(507, 298, "SH 2")
                .text(507, 309, "B-4")
                .text(510, 281, "T1-32")
                .circle(800, 200, 16)
                .line(784, 200, 816, 200)
                .text(797, 196, "C")
                .text(790, 211, "SH 3")
                .read();

        assertThat(Said.references(r)).containsExactlyInAnyOrder("2/B4 P1-20", "2/B4 T1-32");
    }
}
