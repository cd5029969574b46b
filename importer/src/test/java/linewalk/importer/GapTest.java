package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** Gaps that a drafter left in a line for its text. */
class GapTest {

    private static Drawn ends() {
        return Drawn.page()
                .rect(180, 380, 220, 420)
                .text(180, 374, "1V1")
                .rect(580, 380, 620, 420)
                .text(580, 374, "1V2");
    }

    @Test
    void aTextInTheGapBridgesIt() {
        Drawn d = ends().line(220, 400, 370, 400).text(375, 403, "L-101").line(405, 400, 580, 400);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - 1V2");
        assertThat(d.read().lines().get(0).label()).isEqualTo("L-101");
    }

    @Test
    void alsoInALineThatRunsUp() {
        Drawn d = Drawn.page()
                .rect(380, 180, 420, 220)
                .text(340, 203, "1V1")
                .rect(380, 580, 420, 620)
                .text(340, 603, "1V2")
                .line(400, 220, 400, 380)
                .text(403, 416, 270, "L-101")
                .line(400, 422, 400, 580);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - 1V2");
    }

    /** It is no mark of the valve at which it ends, however short it is. */
    @Test
    void theShortPieceAroundTheCornerBeyondTheText() {
        Drawn d = ends().line(220, 400, 240, 400, 240, 378)
                .text(243, 374, 270, "18x2")
                .line(240, 350, 240, 300, 600, 300, 600, 380);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - 1V2");
    }

    /** The last dashes around a corner are too few to be seen as a dashed line of their own. */
    @Test
    void dashesAroundACornerGoOn() {
        Drawn d = Drawn.page()
                .rect(180, 380, 220, 420)
                .text(180, 374, "1V1")
                .rect(380, 480, 420, 520)
                .text(425, 503, "1V2")
                .line(220, 400, 236, 400);
        for (int x = 241; x < 380; x += 21) {
            d.line(x, 400, x + 16, 400);
        }
        d.line(388, 400, 400, 400, 400, 404)
                .line(400, 409, 400, 425)
                .line(400, 430, 400, 446)
                .line(400, 451, 400, 467)
                .line(400, 472, 400, 480);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - 1V2");
    }

    @Test
    void anEmptyGapIsNone() {
        Drawn d = ends().line(220, 400, 370, 400).line(405, 400, 580, 400);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - open", "1V2 - open");
    }

    @Test
    void aTextThatDoesNotFillTheGapIsNone() {
        Drawn d = ends().line(220, 400, 300, 400).text(395, 403, "L-101").line(500, 400, 580, 400);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - open", "1V2 - open");
    }

    @Test
    void endsThatAreNotInOneStraightLineAreNotBridged() {
        Drawn d = ends().line(220, 400, 370, 400).text(375, 403, "L-101").line(580, 407, 405, 407);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - open", "1V2 - open");
    }

    @Test
    void aSolidAndADashedLineAreNotBridged() {
        Drawn d = ends().line(220, 400, 370, 400)
                .text(375, 403, "L-101")
                .pen(1, 6, 3)
                .line(580, 400, 405, 400);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - open", "1V2 - open");
    }

    /** Back to back on one level: the lines end here, each at its own reference. */
    @Test
    void twoDifferentReferencesBetweenTheEndsDoNotBridge() {
        Drawn d = ends().line(220, 400, 370, 400)
                .text(374, 403, "2.B4")
                .text(406, 403, "3.C1")
                .line(430, 400, 580, 400);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - to 2/B4", "1V2 - to 3/C1");
    }

    /** So near to each other that they are one label: whatever it says, the lines are not joined over it. */
    @Test
    void norDoTwoThatStandAsOneText() {
        Drawn d = ends().line(220, 400, 370, 400).text(374, 403, "2.B4 3.C1").line(424, 400, 580, 400);

        assertThat(Said.lines(d.read())).doesNotContain("1V1 - 1V2");
    }

    @Test
    void norDoesOneReferenceBetweenTwoEnds() {
        Drawn d = ends().line(220, 400, 370, 400).text(374, 403, "2.B4").line(400, 400, 580, 400);

        SheetReading r = d.read();

        assertThat(Said.references(r)).containsExactly("2/B4");
        assertThat(Said.lines(r)).doesNotContain("1V1 - 1V2");
    }

    @Test
    void aThreadSizeInTheGapBridgesItThoughItLooksLikeAZone() {
        Drawn d = ends().line(220, 400, 370, 400).text(375, 403, "G1/2").line(405, 400, 580, 400);

        assertThat(Said.lines(d.read())).containsExactly("1V1 - 1V2");
    }

    @Test
    void aLineThatCrossesInTheGapBridgesIt() {
        for (double half = 3; half < 9; half++) {
            Drawn d = ends().line(220, 400, 400 - half, 400)
                    .line(400 + half, 400, 580, 400)
                    .line(400, 300, 400, 500);

            assertThat(Said.lines(d.read())).as("gap of %s", 2 * half).contains("1V1 - 1V2");
        }
    }

    @Test
    void butNotAWideOne() {
        Drawn d = ends().line(220, 400, 380, 400).line(420, 400, 580, 400).line(400, 300, 400, 500);

        assertThat(Said.lines(d.read())).contains("1V1 - open", "1V2 - open");
    }
}
