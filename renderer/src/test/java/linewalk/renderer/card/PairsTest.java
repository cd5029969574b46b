package linewalk.renderer.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import org.junit.jupiter.api.Test;

/** A wrong motor locked out is worse than one still to be found. */
class PairsTest {

    private static Component part(String tag, Kind kind) {
        Point place = new Point(100, 100);
        return new Component(
                tag,
                tag,
                new PageKey("pairs.pdf", 1),
                place,
                Box.around(place),
                kind,
                null,
                Origin.TEXT,
                1,
                List.of(),
                List.of());
    }

    private static String motorOf(String pump, Component... motors) {
        return Pairs.motorOf(part(pump, Kind.PUMP), List.of(motors))
                .map(Component::tag)
                .orElse("none");
    }

    private static Component motor(String tag) {
        return part(tag, Kind.ELECTRIC_MOTOR);
    }

    @Test
    void circuitAndNumberPair() {
        assertThat(motorOf("0P2", motor("0M1"), motor("0M2"))).isEqualTo("0M2");
        assertThat(motorOf("P-101", motor("M-101"))).isEqualTo("M-101");
        assertThat(motorOf("p1", motor("M1"))).isEqualTo("M1");
    }

    @Test
    void nothingElseDoes() {
        assertThat(motorOf("0P2", motor("0M1"))).isEqualTo("none");
        assertThat(motorOf("0P1", motor("1M1"))).isEqualTo("none");
        assertThat(motorOf("P1.1", motor("M11"))).isEqualTo("none");
        assertThat(motorOf("PUMP", motor("MUMP"))).isEqualTo("none");
        assertThat(motorOf("0P1", part("0M1", Kind.MOTOR))).isEqualTo("none");
    }
}
