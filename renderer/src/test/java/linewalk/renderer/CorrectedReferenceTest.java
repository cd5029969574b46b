package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Target;
import linewalk.drawing.Zone;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where a hand tag says another place than the drawing, the print tells both: at the machine the drawing is at hand. */
class CorrectedReferenceTest {

    @ParameterizedTest
    @EnumSource(Look.class)
    void bothAreTold(Look look) {
        Bench bench = new Bench().roundTrip();
        bench.look = look;
        bench.correct("2.C1@1", new Target("2", new Zone("A", "4")));
        assertThat(Prints.text(Prints.print(bench.job(), "corrected-" + look)))
                .containsOnlyOnce("corrected by hand: sheet 1, A4, 2.C1 to 2/A4.");
    }
}
