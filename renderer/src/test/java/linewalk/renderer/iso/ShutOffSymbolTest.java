package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** Filled where shut (common practice, no source). */
class ShutOffSymbolTest {

    private static Sketch shutOff() {
        return new Sketch(Kind.SHUT_OFF_VALVE, "1_ 2^");
    }

    private static boolean filled(Sketch s) {
        return !InkLog.of(s.symbol()).fills.isEmpty();
    }

    @Test
    void byTheSetting() {
        assertThat(filled(shutOff())).isFalse();
        assertThat(filled(shutOff().setting("normally closed"))).isTrue();
        assertThat(filled(shutOff().setting("N.C."))).isTrue();
    }

    @Test
    void byThePositionItStandsIn() {
        assertThat(filled(shutOff().position("rest: 1-2"))).isFalse();
        assertThat(filled(
                        shutOff().position("rest: 1-2").position("lever lever:").active(1)))
                .isTrue();
    }
}
