package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** Line numbers stand beside the lines of the drawn look. */
class LineNumbersTest {

    @Test
    void betweenTwoParts() {
        Bench bench = new Bench();
        Component pump = bench.part(1, "P1", Kind.PUMP, 100, 300, "P@100,275");
        Component valve = bench.part(1, "V1", Kind.CHECK_VALVE, 100, 100, "A@100,125");
        bench.through(pump, null, "P", null);
        bench.along(1, "L-77", Bench.at(100, 275), Bench.at(100, 125));
        bench.through(valve, "A", null, null);
        String text = Prints.text(Prints.print(bench.job(), "line-number"));
        assertThat(text.split("L-77", -1)).as("on the line and in the walk").hasSize(3);
    }

    @Test
    void onBothSidesOfACrossing() {
        assertThat(Prints.text(Prints.print(new Bench().roundTrip().job(), "line-number-crossing")))
                .contains("sheet 2, A2 (L-2)", "sheet 3, D2 (L-2)");
    }
}
