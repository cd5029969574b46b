package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

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
}
