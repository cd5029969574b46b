package linewalk.linker;

import static linewalk.linker.Drawn.from;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Oil leaves a pump by its pressure side, whether the drawing names it or not. */
class PumpSideTest {

    @Test
    void theSuctionSideIsTheOneThatReachesTheTankThroughPassivePartsAlone() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part T1 tank D1 S R
                part Z1 strainer C1 A B
                part P1 pump B1 -x -y
                part V1 directional-valve A1 P T
                pos V1 rest P-T
                line T1:S Z1:A
                line Z1:B P1:x
                line P1:y V1:P
                line V1:T T1:R
                """);
        assertThat(drawn.walk(from("P1"))).isEqualTo("P1 V1 T1");
    }

    @Test
    void inAKidneyLoopItIsTheSideWithFewerPartsToTheTank() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part T1 tank D1 S R
                part P1 pump B1 -x -y
                part F1 filter A1 A B
                line T1:S P1:x
                line P1:y F1:A
                line F1:B T1:R
                """);
        assertThat(drawn.walk(from("P1"))).isEqualTo("P1 F1 T1");
    }

    @Test
    void arrowsTellWhereTheTankIsOutOfReach() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part P1 pump B1 -x -y
                ref a A4 > 2/A1 L-1 in
                ref b B4 > 2/B1 L-2 out
                line P1:x a
                line P1:y b
                sheet 2
                ref c A1 > 1/A4 L-1 out
                ref d B1 > 1/B4 L-2 in
                part V1 directional-valve C1 A B
                pos V1 rest A-B
                part V2 directional-valve C2 A B
                pos V2 rest A-B
                part T1 tank D1 S R
                line c V2:A
                line V2:B T1:S
                line d V1:A
                line V1:B T1:R
                """);
        assertThat(drawn.walk(from("P1"))).isEqualTo("P1 b>d V1 T1");
    }

    @Test
    void aCheckValveTellsToo() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part P1 pump B1 -x -y
                part V1 check-valve A1 A B
                pos V1 rest A>B
                part V2 check-valve C1 A B
                pos V2 rest A>B
                part M1 motor D1 A B
                line V1:B P1:x
                line P1:y V2:A
                line V2:B M1:A
                line M1:B V1:A
                """);
        assertThat(drawn.walk(new Question("P1", List.of(), "M1", null, false, false, 1)))
                .isEqualTo("P1 V2 M1");
    }

    @Test
    void neverByTheDrain() {
        Drawn drawn = Drawn.of("""
                sheet 1
                part P1 pump B1 -x L
                part T1 tank D1 D R
                part F1 filter A1 A B
                line P1:L T1:D
                line P1:x F1:A
                line F1:B T1:R
                """);
        assertThat(drawn.walk(from("P1"))).isEqualTo("P1 F1 T1");
    }
}
