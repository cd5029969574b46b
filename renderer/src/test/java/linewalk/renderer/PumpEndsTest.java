package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.renderer.iso.Side;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A pump's triangle points to where it delivers, also where no letters tell its ports apart. */
class PumpEndsTest {

    @ParameterizedTest
    @ValueSource(strings = {"1", "2"})
    void asThePathGoes(String out) {
        Bench bench = new Bench();
        Component pump = bench.part(1, "0P1", Kind.PUMP, 200, 400, "1@200,375", "2@200,425");
        bench.through(pump, null, out, null);
        bench.along(1, "L-1", Bench.at(200, 375), Bench.at(200, 100));
        bench.through(bench.part(1, "0V2", Kind.CHECK_VALVE, 200, 90, "A@200,100", "B@200,80"), "A", null, null);

        assertThat(side(bench, "0P1:" + out)).isEqualTo(Side.TOP);
    }

    private static Side side(Bench bench, String port) {
        PrintJob job = bench.job();
        return SchemeBuilder.build(job, Doubts.of(job))
                .nodesOf(Kind.PUMP)
                .get(0)
                .figure()
                .place(port)
                .side();
    }
}
