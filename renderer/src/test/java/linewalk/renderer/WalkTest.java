package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** The walk in plain words. */
class WalkTest {

    @Test
    void startsAtThePumpAndNamesBothEndsOfACrossing() {
        List<String> walk = TracePrint.walk(new Bench().roundTrip().job());
        assertThat(walk.get(0))
                .isEqualTo("From pump 0P1 (item 1; sheet 1, C1), port P, along line L-1 to reference 2.C1 on sheet 1,"
                        + " A4; goes on at sheet 2, C1 (reference 1.A4).");
    }

    @Test
    void tellsPartsLinesAndTheEndInOrder() {
        assertThat(TracePrint.walk(new Bench().roundTrip().job()))
                .hasSize(12)
                .element(1)
                .isEqualTo("Along line L-1 to directional valve 1V1.");
        assertThat(TracePrint.walk(new Bench().roundTrip().job()))
                .element(2)
                .isEqualTo("Through directional valve 1V1 (item 3; sheet 2, C2) from P to A.");
        assertThat(TracePrint.walk(new Bench().roundTrip().job()))
                .element(11)
                .isEqualTo("Ends at TANK (item 2; sheet 1, D3).");
    }

    @Test
    void saysThatACourseJoinedByHandIsNotDrawn() {
        Bench bench = new Bench();
        Component a = bench.part(1, "V1", Kind.CHECK_VALVE, 100, 100, "A@100,75", "B@100,125");
        Component b = bench.part(1, "V2", Kind.UNKNOWN, 300, 100, "A@300,75");
        bench.through(a, null, "B", null);
        bench.along(1, null, Bench.at(100, 125), Bench.at(300, 75), List.of());
        bench.through(b, "A", null, null);
        assertThat(TracePrint.walk(bench.job()).get(0))
                .isEqualTo(
                        "From check valve V1 (item 1; sheet 1, A1), port B, along an unnumbered line (joined by hand;"
                                + " its course is not drawn) to part V2.");
    }
}
