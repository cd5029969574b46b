package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Line;
import linewalk.drawing.Point;
import linewalk.drawing.Rule;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/**
 * Where lines join and where they pass: four parts, 1V1 left, 1V2 right, 1V3 above and 1V4 below a meeting place at
 * (400, 400).
 */
class JoinTest {

    private static Drawn valves(int... numbers) {
        Drawn d = Drawn.page();
        for (int n : numbers) {
            double x = n == 1 ? 180 : n == 2 ? 580 : 380;
            double y = n == 3 ? 180 : n == 4 ? 580 : 380;
            d.rect(x, y, x + 40, y + 40).text(x - 20, y - 6, "1V" + n);
        }
        return d;
    }

    private static void joined(Drawn d, String... lines) {
        SheetReading r = d.read();
        assertThat(Said.lines(r)).containsExactly(lines);
        assertThat(r.doubts()).isEmpty();
        assertThat(r.lines()).allSatisfy(l -> assertThat(l.confidence()).isGreaterThanOrEqualTo(0.9));
    }

    @Test
    void aLineJoinsWhatItEndsAt() {
        joined(valves(1, 2).line(220, 400, 580, 400), "1V1 - 1V2");
    }

    @Test
    void aLineInManyPiecesIsOne() {
        joined(valves(1, 2).line(220, 400, 300, 400).line(300, 400, 450, 400).line(450, 400, 580, 400), "1V1 - 1V2");
    }

    @Test
    void piecesThatAllButTouchAreOne() {
        joined(valves(1, 2).line(220, 400, 400, 400).line(400.7, 400, 579.4, 400), "1V1 - 1V2");
    }

    @Test
    void cornersAreNoEnds() {
        joined(valves(1, 4).line(220, 400, 400, 400).line(400, 400, 400, 580), "1V1 - 1V4");
    }

    @Test
    void aLineThatEndsOnAnotherJoinsItWithoutADot() {
        joined(valves(1, 2, 4).line(220, 400, 580, 400).line(400, 400, 400, 580), "1V1 - 1V2 - 1V4");
    }

    @Test
    void andWithADot() {
        joined(valves(1, 2, 4).line(220, 400, 580, 400).line(400, 400, 400, 580).dot(400, 400), "1V1 - 1V2 - 1V4");
    }

    @Test
    void andWithALargeOneOverLinesThatCross() {
        joined(
                valves(1, 2, 4)
                        .line(220, 400, 580, 400)
                        .line(400, 380, 400, 580)
                        .dot(400, 400, 3.6),
                "1V1 - 1V2 - 1V4 - open");
    }

    @Test
    void threeEndsThatMeetJoin() {
        joined(
                valves(1, 2, 4)
                        .line(220, 400, 400, 400)
                        .line(400, 400, 580, 400)
                        .line(400, 400, 400, 580),
                "1V1 - 1V2 - 1V4");
    }

    @Test
    void linesThatCrossPass() {
        joined(valves(1, 2, 3, 4).line(220, 400, 580, 400).line(400, 220, 400, 580), "1V1 - 1V2", "1V3 - 1V4");
    }

    @Test
    void aDotAtTheCrossingJoinsThem() {
        joined(
                valves(1, 2, 3, 4)
                        .line(220, 400, 580, 400)
                        .line(400, 220, 400, 580)
                        .dot(400, 400),
                "1V1 - 1V2 - 1V3 - 1V4");
    }

    @Test
    void aDotMayHaveARimOfItsOwn() {
        joined(fourEnds().dot(400, 400).pen(0.3).circle(400, 400, 2.5), "1V1 - 1V2 - 1V3 - 1V4");
    }

    @Test
    void aDotAtFourEndsJoinsThemWithoutDoubt() {
        joined(fourEnds().dot(400, 400), "1V1 - 1V2 - 1V3 - 1V4");
    }

    /** Drawn so, a crossing and a join look alike: whatever is taken, it is told. */
    @Test
    void fourEndsWithoutADotAreDoubtful() {
        SheetReading r = fourEnds().read();

        assertThat(r.lines()).extracting(Line::confidence).allSatisfy(c -> assertThat(c)
                .isLessThan(0.9));
        assertThat(r.doubts()).isNotEmpty().allSatisfy(f -> {
            assertThat(f.rule()).isEqualTo(Rule.DOUBTFUL_JOIN);
            assertThat(f.place().distancePt(new Point(400, 400))).isLessThan(2);
            assertThat(f.remedy()).isNotBlank();
        });
    }

    /** Some programs cut lines where they cross. The drafter sets a dot where they join. */
    @Test
    void fourEndsWithoutADotPassWhereTheSheetsJointsHaveDots() {
        Drawn d = fourEnds();
        for (int i = 0; i < 3; i++) {
            double x = 800 + 60 * i;
            d.line(x, 300, x, 500).line(x, 400, x + 40, 400).dot(x, 400);
        }
        SheetReading r = d.read();

        assertThat(Said.lines(r)).contains("1V1 - 1V2", "1V3 - 1V4");
        assertThat(r.doubts()).isEmpty();
    }

    /** Two ends on opposite sides of a line that runs through. */
    @Test
    void twoEndsThatMeetOnAThirdLineAreDoubtful() {
        SheetReading r = valves(1, 2, 3, 4)
                .line(220, 400, 580, 400)
                .line(400, 220, 400, 400)
                .line(400, 400, 400, 580)
                .read();

        assertThat(r.doubts()).isNotEmpty();
        assertThat(r.lines()).extracting(Line::confidence).allSatisfy(c -> assertThat(c)
                .isLessThan(0.9));
    }

    @Test
    void aHopOverALinePasses() {
        joined(
                valves(1, 2, 3, 4)
                        .line(400, 220, 400, 580)
                        .line(220, 400, 394, 400)
                        .arc(394, 400, 406, 400)
                        .line(406, 400, 580, 400),
                "1V1 - 1V2",
                "1V3 - 1V4");
    }

    /** A bare curve with a designation is a hose; not where it leads over another line. */
    @Test
    void alsoBesideADesignation() {
        joined(
                valves(1, 2, 3, 4)
                        .line(400, 220, 400, 580)
                        .line(220, 400, 390, 400)
                        .arc(390, 400, 410, 400)
                        .line(410, 400, 580, 400)
                        .rect(412, 340, 430, 358)
                        .text(412, 385, "1V5"),
                "1V1 - 1V2",
                "1V3 - 1V4");
    }

    @Test
    void whereALineStopsShortItEndsOpen() {
        SheetReading r = valves(1).line(220, 400, 400, 400).read();

        assertThat(Said.lines(r)).containsExactly("1V1 - open");
        assertThat(r.lines().get(0).ends()).anySatisfy(e -> assertThat(e.place().distancePt(new Point(400, 400)))
                .isLessThan(0.1));
    }

    @Test
    void theDrawnCourseIsKept() {
        Line l = valves(1, 4).line(220, 400, 400, 400, 400, 580).read().lines().get(0);

        assertThat(l.runs()).singleElement().satisfies(run -> assertThat(run).hasSize(3));
    }

    private static Drawn fourEnds() {
        return valves(1, 2, 3, 4)
                .line(220, 400, 400, 400)
                .line(400, 400, 580, 400)
                .line(400, 220, 400, 400)
                .line(400, 400, 400, 580);
    }
}
