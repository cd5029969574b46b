package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A path that needs a valve to shift says so first. */
class ShiftNoticeTest {

    @Test
    void standsBeforeEverythingElseBesideThePicture() {
        Bench bench = new Bench();
        bench.anyPosition = true;
        bench.roundTrip();
        assertThat(Prints.text(Prints.print(bench.job(), "shift")))
                .containsSubsequence(
                        "This path is open only after valves have shifted: Directional valve 1V1 must be shifted by"
                                + " solenoid Y1A.",
                        "Doubts")
                .contains("SHIFT: Y1A");
    }

    @Test
    void isSaidOnceForAValvePassedTwice() {
        Bench bench = new Bench();
        bench.anyPosition = true;
        bench.roundTrip();
        String text = Prints.text(Prints.print(bench.job(), "shift-once"));
        assertThat(text.split("must be shifted by solenoid Y1A\\.", -1)).hasSize(4);
    }
}
