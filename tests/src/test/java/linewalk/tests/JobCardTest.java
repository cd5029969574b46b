package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's job cards, from the drawn sheets to the paper in the planner's hand. */
class JobCardTest {

    @TempDir
    static Path folder;

    private static Path demo;

    @BeforeAll
    static void writeTheDemo() {
        demo = folder.resolve("demo");
        fine("demo", demo);
    }

    private static String card(Path pdf) {
        String text = Print.of(pdf, demo.resolve("link-span.pdf")).text();
        assertThat(text).contains("Job card");
        return text.substring(text.indexOf("Job card"));
    }

    @Test
    void raisingTheSpanNamesWhatTheMachineHas() {
        Path pdf = folder.resolve("raise.pdf");
        fine("trace", demo, "--from", "0P1", "--via", "1A1", "--step", "Raise span", "--job-card", "--out", pdf);
        Print.isSound(pdf);
        assertThat(card(pdf))
                .contains("electric motor 0M1, 37 kW: by its number it drives pump 0P1")
                .contains("shut off valve 1V8: on this path, between 1V1 and 1V3")
                .contains("directional valve 1V1: solenoids Y1A, Y1B (Y1A energised in this step)")
                .contains("accumulator 0Z6, as drawn or listed: 32 L / 100 bar")
                .contains("MP1 sheet 2, C7 not known 0 to 400 bar 0V5, 230 bar");
    }

    @Test
    void standbyHoldsOilUnderTheHoistCylinder() {
        Path pdf = folder.resolve("hoist.pdf");
        fine("circuit", demo, "--actuator", "1A1", "--step", "1", "--paper", "A4", "--job-card", "--out", pdf);
        assertThat(card(pdf)).contains("Held oil, shut in, in").contains("held oil stands at it");
    }

    @Test
    void aCardWithoutAPrintIsRefused() {
        Refusal.isWrongUse(linewalk("trace", demo, "--from", "0P1", "--job-card"), "--out path.pdf");
    }
}
