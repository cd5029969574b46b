package linewalk.tests;

import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Questions that cannot be answered: wrong use is told with what would be right, no path with where it ends. */
class BadQuestionTest {

    @TempDir
    Path folder;

    private Path set;

    @BeforeEach
    void tag() {
        set = TaggedSet.tagged(folder);
    }

    @Test
    void anUnknownDesignationIsAnsweredWithTheNearest() {
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P2"), "no component P2", "P1");
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--to", "TNAK"), "no component TNAK", "TANK");
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--via", "C2"), "no component C2", "C1");
    }

    @Test
    void anUnknownPortIsAnsweredWithThoseThereAre() {
        Refusal.isWrongUse(linewalk("trace", set, "--from", "V1:X"), "V1", "X", "P", "T", "A", "B");
    }

    @Test
    void anUnknownStepIsAnsweredWithTheNearest() {
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--step", "Extent"), "no step Extent", "Extend");
    }

    @Test
    void anUnknownStepOfACircuitToo() {
        Refusal.isWrongUse(
                linewalk("circuit", set, "--step", "Extent", "--out", folder.resolve("print.pdf")),
                "no step Extent",
                "Extend");
    }

    @Test
    void aStepWithoutACycleChart() {
        set.resolve("cycle.csv").toFile().delete();
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--step", "Extend"), "no cycle chart");
        Path print = folder.resolve("print.pdf");
        Refusal.isWrongUse(linewalk("circuit", set, "--step", "Extend", "--out", print), "no cycle chart");
    }

    @Test
    void noPathEndsWithWhereAndWhy() {
        Run run = linewalk("trace", set, "--from", "P1", "--to", "C1");
        Refusal.isOneLine(run, 1, "no path: ends at TANK", "sheet 20");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void noPathIsNoPathForProgramsToo() {
        Run run = linewalk("trace", set, "--from", "P1", "--to", "C1", "--format", "json");
        Refusal.isOneLine(run, 1, "no path");
        assertThat(run.json().has("path")).isFalse();
        assertThat(run.json().get("stopped").asText()).contains("ends at TANK");
        assertThat(run.json().get("reached")).isNotEmpty();
    }

    @Test
    void noPathWritesNoPrint() {
        Path print = folder.resolve("print.pdf");
        assertThat(linewalk("trace", set, "--from", "P1", "--to", "C1", "--out", print)
                        .status())
                .isEqualTo(1);
        assertThat(print).doesNotExist();
    }

    @Test
    void aPrintThatIsNoPdf() {
        Path print = folder.resolve("print.docx");
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--out", print), "print.docx", ".pdf");
        assertThat(print).doesNotExist();
    }

    @Test
    void wordsThatAreNoOptions() {
        Refusal.isWrongUse(linewalk("trace", set), "--from", "--help");
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--look", "sketch"), "sketch", "--look");
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--paths", "none"), "none", "--paths");
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--paths", "0"), "--paths");
        Refusal.isWrongUse(linewalk("wander", set), "wander");
        Refusal.isWrongUse(linewalk("import", folder.resolve("press.pdf")), "--into");
    }
}
