package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Path2D;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The small shapes inside symbols, of which thinning leaves little. */
class ScanSymbolsTest {

    private static Point px(double x, double y) {
        return new Point(x / Sketch.PX_PER_PT, y / Sketch.PX_PER_PT);
    }

    private static List<Stroke> inside(Marks m) {
        return m.strokes().stream().filter(s -> s.lengthPt() < 200).toList();
    }

    private static void hasCorner(Fill head, double x, double y, double withinPt) {
        assertThat(head.outline())
                .anySatisfy(p -> assertThat(p.distancePt(px(x, y))).isLessThan(withinPt));
    }

    /** In a square's corner, its shaft at its base, its tip in the ink of the side. */
    @Test
    void theArrowOfAPassageIsATriangleOnItsShaft() {
        Marks m = new Sketch()
                .stroke(4, new java.awt.Rectangle(500, 400, 150, 150))
                .line(4, 540, 400, 610, 550)
                .solid(610, 550, 583, 524, 606, 513)
                .marks();
        assertThat(m.fills()).hasSize(1);
        Fill head = m.fills().get(0);
        assertThat(head.outline()).hasSize(3);
        hasCorner(head, 610, 550, 1.2);
        hasCorner(head, 583, 524, 1);
        hasCorner(head, 606, 513, 1);
    }

    @Test
    void aSlenderArrowheadIsSeenAlongItsLine() {
        Marks m = new Sketch()
                .line(8, 300, 200, 900, 200)
                .line(4, 300, 400, 600, 400)
                .solid(600, 400, 570, 393, 570, 407)
                .marks();
        assertThat(m.fills()).hasSize(1);
        assertThat(m.fills().get(0).outline()).hasSize(3);
        hasCorner(m.fills().get(0), 600, 400, 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1.2})
    void aSpringComesToItsPoints(double skewDeg) {
        Path2D zigzag = new Path2D.Double();
        zigzag.moveTo(500, 400);
        for (int i = 1; i <= 6; i++) {
            zigzag.lineTo(500 + 14 * i, i % 2 == 1 ? 360 : 400);
        }
        List<Stroke> legs = inside(new Sketch(skewDeg).stroke(4, zigzag).marks());
        assertThat(legs).hasSize(6).noneMatch(Stroke::curved);
    }

    @Test
    void theArmsOfASeatRunOnAlongItsBall() {
        double r = 24;
        double tip = 560 - r * Math.sqrt(2) - 4;
        Path2D seat = new Path2D.Double();
        seat.moveTo(tip + 50, 410);
        seat.lineTo(tip, 460);
        seat.lineTo(tip + 50, 510);
        Marks m = new Sketch()
                .circle(4, 560, 460, r)
                .stroke(4, seat)
                .line(6, 300, 460, tip, 460)
                .line(6, 560 + r, 460, 800, 460)
                .marks();
        List<Stroke> arms = inside(m).stream()
                .filter(s -> !s.closed() && s.box().heightPt() > 5)
                .toList();
        assertThat(arms).hasSize(2);
        assertThat(arms).allSatisfy(s -> {
            assertThat(Math.min(s.first().distancePt(px(tip, 460)), s.last().distancePt(px(tip, 460))))
                    .isLessThan(1.2);
            assertThat(s.lengthPt()).isGreaterThan(0.85 * Math.hypot(50, 50) / Sketch.PX_PER_PT);
        });
    }

    private static List<Stroke> rounds(Marks m) {
        return m.strokes().stream()
                .filter(s -> s.closed() && s.curved() && s.box().widthPt() < 30)
                .toList();
    }

    private static Path2D seat(double x, double y, double far) {
        Path2D seat = new Path2D.Double();
        seat.moveTo(x - far, y - far);
        seat.lineTo(x, y);
        seat.lineTo(x + far, y - far);
        return seat;
    }

    /** Its seat leaves too little of the ball's pen to tell bows from corners, but the paper in it is round. */
    @Test
    void aSmallBallOnItsSeatIsRound() {
        Marks m = new Sketch()
                .circle(4, 600, 460, 11)
                .stroke(4, seat(600, 481, 24))
                .line(4, 600, 481, 600, 700)
                .line(4, 600, 200, 600, 449)
                .marks();
        assertThat(rounds(m)).singleElement().satisfies(s -> {
            assertThat(s.box().center().distancePt(px(600, 460))).isLessThan(0.5);
            assertThat(s.box().widthPt()).isBetween(20 / Sketch.PX_PER_PT, 25 / Sketch.PX_PER_PT);
        });
    }

    /** Thinning takes arms that reach no further than the ink is thick for rough edges. */
    @Test
    void armsThatReachLittleBeyondTheirBallAreSeen() {
        double r = 23;
        double tip = 460 + r * Math.sqrt(2) + 2;
        Marks m = new Sketch()
                .circle(5, 600, 460, r)
                .stroke(5, seat(600, tip, 32))
                .line(8, 600, tip, 600, 700)
                .line(8, 600, 200, 600, 460 - r)
                .line(8, 300, 800, 1100, 800)
                .marks();
        assertThat(inside(m).stream()
                        .filter(s ->
                                !s.closed() && s.box().widthPt() > 4 && s.box().heightPt() > 4))
                .hasSize(2)
                .allSatisfy(s -> assertThat(Math.min(
                                s.first().distancePt(px(600, tip)), s.last().distancePt(px(600, tip))))
                        .isLessThan(1.5));
    }

    @Test
    void theBallInAValveLeavesItsTwoTriangles() {
        Path2D valve = new Path2D.Double();
        valve.moveTo(570, 400);
        valve.lineTo(630, 400);
        valve.lineTo(570, 520);
        valve.lineTo(630, 520);
        valve.closePath();
        Marks m = new Sketch()
                .stroke(4, valve)
                .paper(600, 460, 16)
                .circle(4, 600, 460, 14)
                .line(6, 600, 200, 600, 400)
                .line(6, 600, 520, 600, 800)
                .marks();
        assertThat(rounds(m)).hasSize(1);
        assertThat(m.strokes().stream().filter(s -> s.closed() && s.points().size() == 3))
                .hasSize(2)
                .allSatisfy(s -> assertThat(s.points())
                        .anySatisfy(p -> assertThat(p.distancePt(px(600, 460))).isLessThan(0.6)));
    }

    @Test
    void theWallsOfAThrottleAreTwoBows() {
        Sketch s = new Sketch().line(6, 300, 460, 900, 460);
        for (int side : new int[] {-1, 1}) {
            Path2D bow = new Path2D.Double();
            for (int i = -8; i <= 8; i++) {
                double t = i / 8.0;
                double y = 460 + side * (6 + 34 * t * t);
                if (i == -8) {
                    bow.moveTo(600 + 45 * t, y);
                } else {
                    bow.lineTo(600 + 45 * t, y);
                }
            }
            s.stroke(4, bow);
        }
        List<Stroke> bows = s.line(4, 550, 520, 650, 400).marks().strokes().stream()
                .filter(Stroke::curved)
                .toList();
        assertThat(bows).hasSize(2);
        assertThat(bows)
                .allSatisfy(b -> assertThat(b.first().distancePt(b.last())).isGreaterThan(80 / Sketch.PX_PER_PT));
    }

    /** Side by side in two squares, each on its stem. */
    @Test
    void barsThatBlockPortsAreNoDashes() {
        List<Stroke> drawn = inside(new Sketch()
                .line(4, 500, 400, 540, 400)
                .line(4, 520, 400, 520, 440)
                .line(4, 560, 400, 600, 400)
                .line(4, 580, 400, 580, 440)
                .line(4, 620, 400, 660, 400)
                .line(4, 640, 400, 640, 440)
                .marks());
        assertThat(drawn).allMatch(s -> s.dash().solid()).hasSize(6);
    }

    /** A valve that is shut: no arrows, and no line through it. */
    @Test
    void twoFilledTrianglesTipToTipAreOneShape() {
        Marks m = new Sketch()
                .line(8, 300, 460, 1100, 460)
                .solid(650, 460, 560, 410, 560, 510)
                .solid(650, 460, 740, 410, 740, 510)
                .line(4, 650, 460, 650, 540)
                .marks();
        assertThat(m.fills()).isEmpty();
        assertThat(m.strokes().stream()
                        .filter(Stroke::closed)
                        .filter(s -> s.box().widthPt() < 40))
                .hasSize(2);
        assertThat(inside(m).stream().filter(s -> !s.closed() && s.box().widthPt() > 40))
                .hasSize(2)
                .allSatisfy(s -> assertThat(Math.min(
                                Math.abs(s.box().x1Pt() - px(560, 0).xPt()),
                                Math.abs(s.box().x0Pt() - px(740, 0).xPt())))
                        .isLessThan(1));
    }

    /** Its three corners are nearly alike, so none of them is plainly the tip that a line could lead to. */
    @Test
    void aLineEndsAtAPumpsCircleBeforeTheTriangleInIt() {
        Marks m = new Sketch()
                .circle(5, 600, 600, 141)
                .solid(600, 459, 646, 531, 554, 531)
                .line(8, 600, 200, 600, 460)
                .marks();
        assertThat(m.strokes())
                .filteredOn(s -> !s.closed() && s.first().distancePt(px(600, 200)) < 2
                        || s.last().distancePt(px(600, 200)) < 2)
                .singleElement()
                .satisfies(s -> assertThat(s.box().y1Pt()).isLessThan(px(0, 464).yPt()));
    }

    /** A test point: its cap comes close to the arms of its seat. */
    @Test
    void aCapDoesNotMeetTheSeatUnderIt() {
        Path2D cap = new Path2D.Double();
        cap.moveTo(524, 420);
        cap.lineTo(500, 420);
        cap.lineTo(500, 500);
        cap.lineTo(524, 500);
        Path2D seat = new Path2D.Double();
        seat.moveTo(534, 422);
        seat.lineTo(572, 460);
        seat.lineTo(534, 498);
        Marks m = new Sketch()
                .stroke(6, cap)
                .stroke(6, seat)
                .line(8, 572, 460, 900, 460)
                .marks();
        assertThat(inside(m).stream()
                        .filter(s -> s.box().heightPt() < 3 && s.box().widthPt() < 10))
                .hasSize(2)
                .allSatisfy(
                        s -> assertThat(s.box().x1Pt()).isLessThan(px(527, 0).xPt()));
    }

    /** A cooler whose flow line is thinner than its diamond. */
    @Test
    void aDiamondIsWholeThoughAnotherPenGoesThroughIt() {
        Marks m = new Sketch()
                .stroke(6, new java.awt.Polygon(new int[] {500, 545, 590, 545}, new int[] {460, 415, 460, 505}, 4))
                .line(3, 500, 460, 590, 460)
                .line(8, 200, 460, 500, 460)
                .line(8, 590, 460, 1200, 460)
                .marks();
        assertThat(m.strokes().stream()
                        .filter(Stroke::closed)
                        .filter(s -> s.box().widthPt() < 100))
                .singleElement()
                .satisfies(s -> assertThat(s.points()).hasSize(4));
    }
}
