package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** Ports that a symbol has no place for do not get a way through it. */
class HousingTest {

    /** The frame's dashes are the longest line drawn dashed. */
    private static boolean framed(Sketch s) {
        Symbol symbol = s.symbol();
        return InkLog.of(symbol).strokes.stream()
                .filter(k -> k.dashed())
                .map(k -> k.line().getBounds2D())
                .anyMatch(b -> b.getWidth() > 4 * Symbol.MODULE_PT && b.getHeight() > 4 * Symbol.MODULE_PT);
    }

    @Test
    void aThirdWorkingPortPutsACheckIntoAFrame() {
        assertThat(framed(new Sketch(Kind.CHECK_VALVE, "1_ 2^"))).isFalse();
        assertThat(framed(new Sketch(Kind.CHECK_VALVE, "1_ 2^ 3^"))).isTrue();
    }

    @Test
    void lettersTooLongForASymbolPutItIntoAFrame() {
        assertThat(framed(new Sketch(Kind.MOTOR, "A_ B_ L_d"))).isFalse();
        assertThat(framed(new Sketch(Kind.MOTOR, "AFTMOST_ B_ DR_d"))).isFalse();
        assertThat(framed(new Sketch(Kind.MOTOR, "IN_ FORWARD_ OUTLET_"))).isTrue();
    }

    @Test
    void aGaugePortOfAPumpIsNoSecondOutlet() {
        assertThat(framed(new Sketch(Kind.PUMP, "S_ P^ M^"))).isTrue();
    }

    @Test
    void inTheFrameTheTwoPortsThatThePassagesNameMeetTheSymbolAndNoOthers() {
        Sketch told = new Sketch(Kind.CHECK_VALVE, "1^ 2_ 3^").position("rest spring: 2>1");
        assertThat(framed(told)).isTrue();
        assertThat(entered(told)).isEqualTo(2);
        assertThat(entered(new Sketch(Kind.CHECK_VALVE, "1^ 2_ 3^"))).isZero();
    }

    @Test
    void ofTwoThatLeadTheSameWayOneStandsBelow() {
        Sketch told = new Sketch(Kind.CHECK_VALVE, "1^ 2^ 3^").position("rest spring: 2>1");
        assertThat(entered(told)).isEqualTo(2);
    }

    /** Whatever line brings it, and though no letter tells. */
    @Test
    void whatAValveOpenedByAPilotLetsNoOilThroughIsItsPilotPort() {
        for (Kind k : List.of(Kind.COUNTERBALANCE_VALVE, Kind.PILOT_CHECK_VALVE)) {
            Symbol s = new Sketch(k, "1^ 2_ 3^")
                    .position("rest spring: 2>1 1>2!pilot")
                    .symbol();
            assertThat(s.place("3").side()).isEqualTo(Side.LEFT);
            assertThat(s.duty("3")).isEqualTo(Duty.CONTROL);
            assertThat(s.duty("1")).isEqualTo(Duty.WORKING);
        }
    }

    /** How many lines lead on from the frame, which stands a module within the field. */
    private static long entered(Sketch s) {
        Symbol symbol = s.symbol();
        double top = Symbol.MODULE_PT;
        double bottom = symbol.heightPt() - Symbol.MODULE_PT;
        return InkLog.of(symbol).strokes.stream()
                .filter(k -> !k.dashed())
                .map(k -> k.line().getBounds2D())
                .filter(b -> Math.abs(b.getMinY() - top) < 0.01 || Math.abs(b.getMaxY() - bottom) < 0.01)
                .count();
    }
}
