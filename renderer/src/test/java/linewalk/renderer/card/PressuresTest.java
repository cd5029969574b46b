package linewalk.renderer.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Settings as they stand on drawings; what can be read in two ways is not read. */
class PressuresTest {

    private static double bar(String setting) {
        return Pressures.bar(setting).orElseThrow();
    }

    @Test
    void barsAreTakenAsTheyStand() {
        assertThat(bar("210 bar")).isEqualTo(210);
        assertThat(bar("210BAR")).isEqualTo(210);
        assertThat(bar("2,5 bar")).isEqualTo(2.5);
        assertThat(bar("45 cm3  170 bar")).isEqualTo(170);
        assertThat(bar("32 L / 100 bar")).isEqualTo(100);
    }

    /** 1 psi is 6894.757 Pa (NIST SP 811, from memory), so 3000 psi are 206.8427 bar. */
    @Test
    void otherUnitsAreConverted() {
        assertThat(bar("3000 psi")).isCloseTo(206.8427, within(0.0001));
        assertThat(bar("3,000 PSI")).isCloseTo(206.8427, within(0.0001));
        assertThat(bar("21 MPa")).isEqualTo(210);
        assertThat(bar("250 kPa")).isCloseTo(2.5, within(1e-9));
        assertThat(Pressures.said("3000 psi", bar("3000 psi"))).isEqualTo("3000 psi = 207 bar");
    }

    @Test
    void theHighestOfSeveralCounts() {
        assertThat(bar("50-210 bar")).isEqualTo(210);
        assertThat(bar("5..210 bar")).isEqualTo(210);
        assertThat(bar("drawn 230 bar, parts list 190 bar")).isEqualTo(230);
    }

    @Test
    void whatIsNoPressureOrCanBeReadInTwoWaysIsNotRead() {
        assertThat(Pressures.bar("")).isEmpty();
        assertThat(Pressures.bar("71 cm3")).isEmpty();
        assertThat(Pressures.bar("210")).isEmpty();
        assertThat(Pressures.bar("1,000 bar")).isEmpty();
        assertThat(Pressures.bar("3.000 psi")).isEmpty();
        assertThat(Pressures.bar("3 000 psi")).isEmpty();
    }
}
