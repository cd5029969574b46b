package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units by definition: 1 psi = 6894.757 Pa, 1 US gallon = 3.785411784 l. */
class SettingTest {

    @ParameterizedTest
    @CsvSource({
        "210 bar, 21 MPa",
        "210 bar, 3046 psi",
        "210 bar, 3050 psi",
        "210, 210 bar",
        "210 BAR, 210bar",
        "40 l/min, 10.6 gpm",
        "'1,5 bar', 1.5 bar",
        "20-250 bar, 20-250 bar",
        "0.5 bar, 50 kPa"
    })
    void oneSettingInTwoForms(String a, String b) {
        assertThat(Setting.differ(a, b)).isFalse();
        assertThat(Setting.differ(b, a)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"210 bar, 201 bar", "210 bar, 20 MPa", "210 bar, 3000 psi", "40 l/min, 40 gpm", "20-250 bar, 20-350 bar"
    })
    void twoSettings(String a, String b) {
        assertThat(Setting.differ(a, b)).isTrue();
        assertThat(Setting.differ(b, a)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"210 bar, 40 l/min", "normally closed, n.c.", "210 bar,", "210 bar, 22 kW"})
    void whatCannotBeComparedDoesNotDiffer(String a, String b) {
        assertThat(Setting.differ(a, b)).isFalse();
    }
}
