package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Supply and return below, actuators above, pilot and drain lines beside. */
class PortSidesTest {

    private static Side side(Kind kind, String ports, String port) {
        return new Sketch(kind, ports).symbol().place(port).side();
    }

    @ParameterizedTest
    @EnumSource(
            names = {
                "CHECK_VALVE",
                "FLOW_CONTROL",
                "ORIFICE",
                "SHUT_OFF_VALVE",
                "FILTER",
                "STRAINER",
                "COOLER",
                "HEATER",
                "HOSE",
                "SWIVEL",
                "RELIEF_VALVE",
                "REDUCING_VALVE",
                "SEQUENCE_VALVE",
                "COUNTERBALANCE_VALVE",
                "UNLOADING_VALVE",
                "PILOT_CHECK_VALVE",
                "PREFILL_VALVE",
                "DECOMPRESSION_VALVE"
            })
    void partsInALineStandUpright(Kind kind) {
        Symbol s = new Sketch(kind, "1^ 2_").symbol();
        assertThat(s.place("1").side()).isEqualTo(Side.TOP);
        assertThat(s.place("2").side()).isEqualTo(Side.BOTTOM);
        assertThat(s.place("1").offsetPt()).isEqualTo(s.place("2").offsetPt());
        Symbol both = new Sketch(kind, "1^ 2^").symbol();
        assertThat(both.place("1").side()).isEqualTo(Side.BOTTOM);
        assertThat(both.place("2").side()).isEqualTo(Side.TOP);
    }

    @ParameterizedTest
    @EnumSource(
            names = {
                "ACCUMULATOR",
                "GAUGE",
                "TEST_POINT",
                "SWITCH",
                "PLUG",
                "BRAKE",
                "CYLINDER",
                "MOTOR",
                "ROTARY_ACTUATOR"
            })
    void whatEndsALineStandsOnIt(Kind kind) {
        assertThat(side(kind, "1^", "1")).isEqualTo(Side.BOTTOM);
    }

    @Test
    void aTankIsMetFromAbove() {
        assertThat(side(Kind.TANK, "1_ 2^", "1")).isEqualTo(Side.TOP);
    }

    @Test
    void aPumpDeliversUpwards() {
        assertThat(side(Kind.PUMP, "P_ S^ L_d", "P")).isEqualTo(Side.TOP);
        assertThat(side(Kind.PUMP, "P_ S^ L_d", "S")).isEqualTo(Side.BOTTOM);
        assertThat(side(Kind.PUMP, "P_ S^ L_d", "L")).isEqualTo(Side.RIGHT);
        assertThat(side(Kind.PUMP, "1^ 2_", "1")).isEqualTo(Side.TOP);
    }

    @Test
    void pilotAndDrainLinesComeFromBeside() {
        assertThat(side(Kind.PILOT_CHECK_VALVE, "1_ 2^ 3_p", "3")).isEqualTo(Side.LEFT);
        assertThat(side(Kind.REDUCING_VALVE, "P_ A^ L_d", "L")).isEqualTo(Side.RIGHT);
        assertThat(side(Kind.UNLOADING_VALVE, "P_ T_ X_p", "X")).isEqualTo(Side.LEFT);
        assertThat(side(Kind.DIRECTIONAL_VALVE, "P_ A^ X_p Y_d", "X")).isEqualTo(Side.LEFT);
        assertThat(side(Kind.DIRECTIONAL_VALVE, "P_ A^ X_p Y_d", "Y")).isEqualTo(Side.RIGHT);
    }

    @Test
    void ofTwoPortsBothAreWorkingPortsWhateverTheirLines() {
        assertThat(side(Kind.CHECK_VALVE, "1_p 2^p", "1")).isEqualTo(Side.BOTTOM);
        assertThat(side(Kind.CHECK_VALVE, "1_p 2^p", "2")).isEqualTo(Side.TOP);
    }

    @Test
    void anUnknownPortIsRefused() {
        Symbol s = new Sketch(Kind.FILTER, "1_ 2^").symbol();
        assertThatThrownBy(() -> s.place("3")).isInstanceOf(IllegalArgumentException.class);
    }
}
