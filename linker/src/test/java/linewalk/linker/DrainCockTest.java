package linewalk.linker;

import static linewalk.linker.Drawn.from;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A shut-off valve between a pump's line and the tank's, with nothing that says how it stands. */
class DrainCockTest {

    private static final String PLANT = """
            sheet 1
            part T1 tank D1 S R
            part P1 pump B1 -x -y
            part V1 check-valve B2 A B
            part K1 shut-off-valve C1 A B
            part V2 directional-valve A1 P T A
            pos V2 rest P-A
            part C1 cylinder A2 A B
            line T1:S P1:x
            line P1:y V1:A
            line V1:B V2:P K1:A
            line K1:B T1:R V2:T
            line V2:A C1:A
            """;

    /** Oil that came to a return line would not climb to the valve: the pump's line is none. */
    @Test
    void thePumpsLineIsNoReturnLineForIt() {
        assertThat(Drawn.of(PLANT).walk(new Question("P1", List.of(), "C1", null, false, false, 1)))
                .isEqualTo("P1 V1 V2 C1");
    }

    /** Beyond a valve's own drain the tank's line is one: nothing climbs from there. */
    @Test
    void theTanksLineStaysAReturnLine() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part T1 tank D1 S R
                part P1 pump B1 -x -y
                part K1 shut-off-valve C1 A B
                part V2 directional-valve A1 P T A
                pos V2 rest P-T T-A
                part C1 cylinder A2 A B
                line T1:S P1:x
                line P1:y V2:P
                line V2:T K1:A
                line K1:B T1:R
                line V2:A C1:A
                """);
        assertThat(drawn.walk(from("P1"))).isEqualTo("P1 V2 K1 T1");
    }
}
