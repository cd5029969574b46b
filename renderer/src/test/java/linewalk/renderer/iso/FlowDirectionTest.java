package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.renderer.iso.InkLog.Filled;
import linewalk.renderer.iso.InkLog.Stroked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The way that a symbol shows is the way that its passages tell; where they tell none it shows none. */
class FlowDirectionTest {

    /** Corners of an open or closed path of straight lines; empty for others. */
    private static List<double[]> corners(Shape shape) {
        List<double[]> corners = new ArrayList<>();
        double[] c = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            int type = i.currentSegment(c);
            if (type == PathIterator.SEG_MOVETO || type == PathIterator.SEG_LINETO) {
                corners.add(new double[] {c[0], c[1]});
            } else if (type != PathIterator.SEG_CLOSE) {
                return List.of();
            }
        }
        return corners;
    }

    /** A seat is two strokes of one length that meet at a right angle, standing on its tip: the y of tips. */
    private static List<Double> seatTips(InkLog ink) {
        List<Double> tips = new ArrayList<>();
        for (Stroked s : ink.strokes) {
            List<double[]> c = corners(s.line());
            if (c.size() == 3 && c.get(0)[1] == c.get(2)[1] && c.get(0)[1] != c.get(1)[1]) {
                tips.add(c.get(1)[1]);
            }
        }
        return tips;
    }

    private static double ballY(InkLog ink) {
        return ink.strokes.stream()
                .filter(s -> corners(s.line()).isEmpty() && !s.dashed())
                .map(s -> s.line().getBounds2D())
                .filter(b -> Math.abs(b.getWidth() - 2 * Symbol.MODULE_PT) < 0.01)
                .filter(b -> Math.abs(b.getHeight() - 2 * Symbol.MODULE_PT) < 0.01)
                .findFirst()
                .orElseThrow()
                .getCenterY();
    }

    /** The tip of the only upright arrow head: it has one corner at the tip and two on a level. */
    private static List<Boolean> headsUp(InkLog ink) {
        List<Boolean> up = new ArrayList<>();
        for (Filled f : ink.fills) {
            List<double[]> c = corners(f.area());
            if (c.size() == 3 && Math.abs(c.get(1)[1] - c.get(2)[1]) < 1e-6) {
                up.add(c.get(0)[1] < c.get(1)[1]);
            }
        }
        return up;
    }

    @ParameterizedTest
    @EnumSource(names = {"CHECK_VALVE", "PILOT_CHECK_VALVE", "PREFILL_VALVE", "DECOMPRESSION_VALVE", "FLOW_CONTROL"})
    void seatsPointToWhereFreeOilComesFrom(Kind kind) {
        InkLog up =
                InkLog.of(new Sketch(kind, "1_ 2^").position("rest: 1>2 1~2").symbol());
        assertThat(seatTips(up)).singleElement().satisfies(tip -> assertThat(tip)
                .isGreaterThan(ballY(up)));
        InkLog down =
                InkLog.of(new Sketch(kind, "1_ 2^").position("rest: 2>1 1~2").symbol());
        assertThat(seatTips(down)).singleElement().satisfies(tip -> assertThat(tip)
                .isLessThan(ballY(down)));
    }

    @ParameterizedTest
    @EnumSource(names = {"CHECK_VALVE", "PILOT_CHECK_VALVE", "PREFILL_VALVE", "DECOMPRESSION_VALVE"})
    void untoldChecksHaveNoSeat(Kind kind) {
        InkLog ink = InkLog.of(new Sketch(kind, "1_ 2^").symbol());
        assertThat(seatTips(ink)).isEmpty();
        assertThat(ink.words()).contains("?");
    }

    @Test
    void aFlowControlThatNothingTellsOfAsks() {
        assertThat(InkLog.of(new Sketch(Kind.FLOW_CONTROL, "1_ 2^").symbol()).shows("?"))
                .isTrue();
        Sketch told = new Sketch(Kind.FLOW_CONTROL, "1_ 2^").position("rest: 1~2");
        assertThat(InkLog.of(told.symbol()).shows("?")).isFalse();
    }

    @ParameterizedTest
    @EnumSource(names = {"RELIEF_VALVE", "REDUCING_VALVE", "SEQUENCE_VALVE", "UNLOADING_VALVE"})
    void arrowsPointTheWayTold(Kind kind) {
        assertThat(headsUp(InkLog.of(
                        new Sketch(kind, "1_ 2^").position("rest: 1>2!pressure").symbol())))
                .containsExactly(true);
        assertThat(headsUp(InkLog.of(
                        new Sketch(kind, "1_ 2^").position("rest: 2>1!pressure").symbol())))
                .containsExactly(false);
        InkLog untold = InkLog.of(new Sketch(kind, "1_ 2^").symbol());
        assertThat(headsUp(untold)).isEmpty();
        assertThat(untold.words()).contains("?");
    }

    @Test
    void aReliefBetweenPAndTNeedsNoPassage() {
        assertThat(headsUp(InkLog.of(new Sketch(Kind.RELIEF_VALVE, "T_ P^").symbol())))
                .containsExactly(false);
    }

    @Test
    void aCounterbalanceIsFreeOneWayAndControlledTheOther() {
        InkLog ink = InkLog.of(new Sketch(Kind.COUNTERBALANCE_VALVE, "1_ 2^")
                .position("rest: 1>2 2>1!pressure")
                .symbol());
        assertThat(seatTips(ink)).singleElement().satisfies(tip -> assertThat(tip)
                .isGreaterThan(ballY(ink)));
        assertThat(headsUp(ink)).containsExactly(false);
        InkLog untold = InkLog.of(new Sketch(Kind.COUNTERBALANCE_VALVE, "1_ 2^").symbol());
        assertThat(seatTips(untold)).isEmpty();
        assertThat(headsUp(untold)).isEmpty();
    }

    @Test
    void lettersComeBeforeTheOrderOfAnOpenPassage() {
        Sketch s = new Sketch(Kind.REDUCING_VALVE, "P_ A^").position("rest: A-P");
        assertThat(headsUp(InkLog.of(s.symbol()))).containsExactly(true);
    }

    @Test
    void aWayThatOnlyAPilotOpensIsNotTheFreeOne() {
        Sketch s = new Sketch(Kind.PILOT_CHECK_VALVE, "1_ 2^ 3_p")
                .position("rest spring: 1>2")
                .position("pilot pilot: 2>1!pilot");
        InkLog ink = InkLog.of(s.symbol());
        assertThat(seatTips(ink)).singleElement().satisfies(tip -> assertThat(tip)
                .isGreaterThan(ballY(ink)));
    }

    @Test
    void passagesThatDisagreeTellNothing() {
        InkLog ink = InkLog.of(
                new Sketch(Kind.CHECK_VALVE, "1_ 2^").position("rest: 1>2 2>1").symbol());
        assertThat(seatTips(ink)).isEmpty();
    }

    @Test
    void inSquaresWithoutLettersOneHeadWherePassagesAgreeOnSupplyAndReturn() {
        InkLog ink = InkLog.of(new Sketch(Kind.DIRECTIONAL_VALVE, "1_ 2_ 3^ 4^")
                .position("Y1 solenoid: 1-3 4-2")
                .position("rest spring: 1-4 3-2")
                .symbol());
        assertThat(heads(ink)).isEqualTo(4);
    }

    @Test
    void inSquaresWithoutLettersBothHeadsWhereTheyDoNot() {
        InkLog ink = InkLog.of(new Sketch(Kind.DIRECTIONAL_VALVE, "1_ 2_ 3^ 4^")
                .position("Y1 solenoid: 3-1 4-2")
                .position("rest spring: 3-2 4-1")
                .symbol());
        assertThat(heads(ink)).isEqualTo(8);
        InkLog single = InkLog.of(new Sketch(Kind.DIRECTIONAL_VALVE, "1_ 2^")
                .position("Y1 solenoid: 1-2")
                .position("rest spring:")
                .symbol());
        assertThat(heads(single)).isEqualTo(2);
    }

    /** Filled triangles. */
    private static long heads(InkLog ink) {
        return ink.fills.stream().filter(f -> corners(f.area()).size() == 3).count();
    }
}
