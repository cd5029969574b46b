package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** A walk that stopped is printed as far as it came, and says where it stopped. */
class StoppedWalkTest {

    @Test
    void onALine() {
        Bench bench = new Bench();
        Component pump = bench.part(1, "P1", Kind.PUMP, 100, 100, "P@100,75");
        bench.through(pump, null, "P", null);
        bench.along(1, "L-5", Bench.at(100, 75), Bench.at(400, 75));
        assertThat(TracePrint.walk(bench.job()))
                .containsExactly("From pump P1 (item 1; sheet 1, A1), port P, along line L-5; the walk stops there,"
                        + " sheet 1, A2.");
        assertThat(Prints.text(Prints.print(bench.job(), "stopped-line")))
                .contains("the walk stops here")
                .contains("DOES NOT ARRIVE")
                .contains("This walk stops before it arrives")
                .doesNotContain("None on this path");
    }

    @Test
    void atAReference() {
        for (Look look : Look.values()) {
            Bench bench = new Bench();
            bench.look = look;
            Component pump = bench.part(1, "P1", Kind.PUMP, 100, 100, "P@100,75");
            bench.through(pump, null, "P", null);
            bench.along(1, "L-5", Bench.at(100, 75), Bench.at(700, 75));
            bench.across(bench.reference(1, "2.A1", 720, 75, 1), bench.reference(2, "1.A4", 60, 75, 1));
            assertThat(Prints.text(Prints.print(bench.job(), "stopped-reference-" + look)))
                    .contains("sheet 1, A4")
                    .contains("sheet 2, A1");
        }
    }

    @Test
    void beforeItBegan() {
        for (Look look : Look.values()) {
            Bench bench = new Bench();
            bench.look = look;
            assertThat(Prints.text(Prints.print(bench.job(), "stopped-empty"))).contains("The walk in words");
        }
    }
}
