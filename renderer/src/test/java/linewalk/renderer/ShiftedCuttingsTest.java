package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Position;
import linewalk.linker.Excerpt;
import linewalk.linker.step.StepState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An original shows valves at rest: a cutting says which are not in its step. */
class ShiftedCuttingsTest {

    @TempDir
    Path folder;

    private PrintJob job() {
        Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), 0);
        bench.look = Look.CUTTINGS;
        return Circuits.whole(bench.job());
    }

    private static Moment shifted(PrintJob job) {
        Component valve = valve(job);
        Position left = valve.positions().get(1);
        CycleChart.Step step = Bench.step("3", "Press down", "Y1A");
        StepState state = new StepState(step, Map.of(valve.id(), left), Map.of(), Set.of(), Map.of(), List.of());
        return new Moment(step, state, null, null);
    }

    private static Component valve(PrintJob job) {
        return job.set().components().stream()
                .filter(c -> c.tag().equals("1V1"))
                .findFirst()
                .orElseThrow();
    }

    private static String text(PrintJob job, Subject subject, Moment moment, String name) {
        return Prints.text(
                Prints.print(new PrintJob(job.facts(), subject, moment, job.form(), job.date()), "shifted-" + name));
    }

    @Test
    void aShiftedValveIsSaidToBeDrawnAtRest() {
        PrintJob job = job();
        assertThat(text(job, job.subject(), shifted(job), "part")).contains("drawn at rest; shifted: Y1A");
    }

    @Test
    void soIsOneThatStandsAtALinesEnd() {
        PrintJob job = job();
        Set<Component> others = new LinkedHashSet<>(job.subject().excerpt().parts());
        others.remove(valve(job));
        Excerpt without = new Excerpt("Lines", others, job.subject().excerpt().lines());
        assertThat(text(job, Subject.of(without), shifted(job), "edge")).contains("3 drawn at rest; shifted: Y1A");
    }

    @Test
    void aValveAtRestNeedsNoWords() {
        PrintJob job = job();
        assertThat(text(job, job.subject(), Moment.AT_REST, "rest")).doesNotContain("shifted:");
    }
}
