package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A line that meets nothing the print shows still says where its ends are. */
class LonelyLineTest {

    @Test
    void withOpenEndsAlone() {
        Bench bench = new Bench().roundTrip();
        bench.aside(1, "L-6", Bench.at(150, 300), Bench.at(700, 300));
        assertThat(Prints.text(Prints.print(Circuits.whole(bench.job()), "lonely-line")))
                .contains("open end, sheet 1, C1")
                .contains("open end, sheet 1, C4");
    }
}
