package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Position;
import org.junit.jupiter.api.Test;

/** A part that lets oil through one way only, and whose way nobody read, is not passed in silence. */
class UnreadWayTest {

    private static Bench through(Kind kind, boolean read) {
        Bench bench = new Bench();
        Component pump = bench.part(1, "P1", Kind.PUMP, 100, 100, "P@100,75");
        Component valve = bench.part(1, "V1", kind, 300, 100, "A@300,75", "B@300,125");
        if (read) {
            Passage free = new Passage("V1:A", "V1:B", true, false, null);
            valve = bench.withPositions(valve, List.of(new Position(List.of("rest"), null, List.of(free))));
        }
        Component tank = bench.part(1, "T", Kind.TANK, 500, 100, "R@500,125");
        bench.through(pump, null, "P", null);
        bench.along(1, null, Bench.at(100, 75), Bench.at(300, 75));
        bench.through(valve, "A", "B", null);
        bench.along(1, null, Bench.at(300, 125), Bench.at(500, 125));
        bench.through(tank, "R", null, null);
        return bench;
    }

    @Test
    void itIsSaidAmongTheDoubtsInTheWalkAndBesideTheSymbol() {
        Bench bench = through(Kind.RELIEF_VALVE, false);
        assertThat(Prints.text(Prints.print(bench.job(), "unread-way")))
                .contains("Which way these let oil through was not read: relief valve V1.")
                .contains("way through not read")
                .doesNotContain("None on this path");
        assertThat(TracePrint.walk(bench.job()).get(1)).endsWith("which way it lets oil through was not read.");
    }

    @Test
    void aWayThatWasReadNeedsNoWords() {
        Bench bench = through(Kind.CHECK_VALVE, true);
        assertThat(Prints.text(Prints.print(bench.job(), "read-way"))).contains("None on this path");
        assertThat(TracePrint.walk(bench.job()).get(1)).doesNotContain("not read");
    }

    @Test
    void aFilterHasNoWayToRead() {
        assertThat(TracePrint.walk(through(Kind.FILTER, false).job()).get(1)).doesNotContain("not read");
    }
}
