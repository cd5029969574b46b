package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import linewalk.drawing.Box;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** A chain line around a manifold: no part, no line work; lines go through its faces. */
class EnclosureTest {

    /** 1V1 and 1V2 inside manifold MB1, 1V3 outside on the right. */
    private static Drawn manifold() {
        return Drawn.page()
                .pen(0.7, 18, 3, 3, 3)
                .rect(150, 150, 500, 500)
                .pen(1)
                .text(156, 162, "MB1")
                .rect(200, 280, 240, 320)
                .text(200, 274, "1V1")
                .rect(380, 280, 420, 320)
                .text(380, 274, "1V2")
                .rect(700, 280, 740, 320)
                .text(700, 274, "1V3");
    }

    @Test
    void itIsReadWithItsTitle() {
        SheetReading r = manifold().read();

        assertThat(r.enclosures()).singleElement().satisfies(e -> {
            assertThat(e.tag()).isEqualTo("MB1");
            assertThat(e.box().grow(1).contains(new Box(150, 150, 500, 500))).isTrue();
        });
        assertThat(Said.tags(r)).containsExactly("1V1", "1V2", "1V3");
    }

    /** A program wrote its dashes one by one; a short side has dashes at its corners alone, and dots between. */
    @Test
    void ofSingleDashes() {
        Drawn d = Drawn.page().pen(0.7);
        for (double[] leg : new double[][] {{180, 200, 300}, {284, 200, 300}}) {
            d.line(leg[0], leg[1], leg[0], 228).line(leg[0], 232.5, leg[0], 239).line(leg[0], 243.5, leg[0], 250);
            d.line(leg[0], 254.5, leg[0], 284);
        }
        for (double y : new double[] {200, 284}) {
            d.line(180, y, 210, y).line(214.5, y, 221, y).line(225.5, y, 232, y).line(236.5, y, 267, y);
            d.line(271.5, y, 278, y).line(282.5, y, 284, y);
        }
        SheetReading r = d.pen(1)
                .rect(200, 222, 240, 262)
                .text(200, 218, "1V1")
                .rect(400, 222, 440, 262)
                .text(400, 216, "1V2")
                .line(240, 242, 400, 242)
                .read();

        assertThat(r.enclosures()).hasSize(1);
        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2");
    }

    @Test
    void aroundOnePartToo() {
        SheetReading r = Drawn.page()
                .pen(0.7, 18, 3, 3, 3)
                .rect(180, 250, 280, 340)
                .pen(1)
                .circle(280, 300, 3)
                .rect(200, 280, 240, 320)
                .text(200, 274, "1V1")
                .rect(400, 280, 440, 320)
                .text(400, 274, "1V2")
                .line(240, 300, 400, 300)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2");
        assertThat(Said.component(r, "1V1").ports())
                .singleElement()
                .satisfies(p -> assertThat(p.place().xPt()).isCloseTo(240, within(2.0)));
    }

    /** As a scan tells it, and many drafters draw it: a valve's squares as one rectangle with rules across. */
    @Test
    void aroundOneValveWhoseSquaresAreOneRectangleCutByRules() {
        SheetReading r = Drawn.page()
                .pen(0.7, 18, 3, 3, 3)
                .rect(175, 260, 325, 345)
                .pen(1)
                .rect(190, 280, 310, 320)
                .line(230, 280, 230, 320)
                .line(270, 280, 270, 320)
                .text(240, 250, "1V1")
                .rect(400, 280, 440, 320)
                .text(400, 274, "1V2")
                .line(250, 320, 250, 400, 420, 400, 420, 320)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2");
        assertThat(Said.component(r, "1V1").ports())
                .singleElement()
                .satisfies(p -> assertThat(p.place().yPt()).isCloseTo(320, within(2.0)));
    }

    @Test
    void itsTitleMayStandOutsideAndItsFacesKeepTheirPortNames() {
        SheetReading r = Drawn.page()
                .pen(0.7, 18, 3, 3, 3)
                .rect(150, 150, 500, 500)
                .pen(1)
                .text(160, 514, "BLOCK B7")
                .rect(200, 280, 240, 320)
                .text(200, 274, "1V1")
                .rect(380, 280, 420, 320)
                .text(380, 274, "1V2")
                .rect(700, 280, 740, 320)
                .text(700, 274, "1V3")
                .text(484, 296, "A1")
                .line(420, 300, 700, 300)
                .read();

        assertThat(r.enclosures()).singleElement().satisfies(e -> {
            assertThat(e.tag()).isEqualTo("BLOCK B7");
            assertThat(e.ports()).singleElement().satisfies(p -> {
                assertThat(p.name()).isEqualTo("A1");
                assertThat(p.place().xPt()).isCloseTo(500, within(1.0));
            });
        });
    }

    @Test
    void aLinePassesItsFace() {
        assertThat(Said.lines(manifold().line(420, 300, 700, 300).read())).containsExactly("1V2 - 1V3");
    }

    @Test
    void twoLinesThatMeetAtAPortMarkAreOne() {
        SheetReading r = manifold()
                .circle(500, 300, 4)
                .text(486, 296, "A1")
                .line(420, 300, 496, 300)
                .line(504, 300, 700, 300)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V2 - 1V3");
    }

    @Test
    void alsoAtASquarePortMarkThatTheLineRunsThrough() {
        SheetReading r =
                manifold().rect(496, 296, 504, 304).line(420, 300, 700, 300).read();

        assertThat(Said.lines(r)).containsExactly("1V2 - 1V3");
    }

    @Test
    void theChainLineDoesNotJoinTheLinesThatCrossIt() {
        SheetReading r = manifold()
                .line(240, 300, 300, 300, 300, 600, 800, 600)
                .text(804, 603, "2.B4")
                .line(420, 300, 700, 300)
                .read();

        assertThat(Said.lines(r)).containsExactly("1V1 - to 2/B4", "1V2 - 1V3");
    }
}
