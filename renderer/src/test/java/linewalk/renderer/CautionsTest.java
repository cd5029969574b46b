package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Every print warns of stored energy, of injection, and of itself. */
class CautionsTest {

    @Test
    void standOnThePrint() {
        for (Look look : Look.values()) {
            Bench bench = new Bench().roundTrip();
            bench.look = look;
            String text = Prints.text(Prints.print(bench.job(), "cautions-" + look));
            assertThat(Cautions.all("")).allSatisfy(c -> assertThat(text).contains(c));
            assertThat(text)
                    .contains("cardboard or wood, never with a hand")
                    .contains("may be wrong")
                    .contains("Local codes");
        }
    }
}
