package linewalk.linker;

import static linewalk.linker.Drawn.from;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A reducing valve whose three lines have no names, one of them to the tank: common practice, no source. */
class ValveDrainTest {

    /** What it leads on to is a pilot line here, so only the drain is left; the trace stops rather than take it. */
    @Test
    void theInletsOilNeverGoesDownTheDrain() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part T1 tank D1 S R
                part P1 pump C1 P S
                part V1 reducing-valve B1 -in -out -drain
                part V2 directional-valve A1 P T
                line T1:S P1:S
                line P1:P V1:in
                line pilot V1:out V2:P
                line V1:drain T1:R
                """);
        assertThat(drawn.walk(from("P1"))).startsWith("stopped: ");
    }
}
