package linewalk.app;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import linewalk.drawing.CycleChart;
import linewalk.drawing.store.AtomicFile;
import linewalk.linker.Steps;
import linewalk.linker.Trace;
import linewalk.linker.step.StepState;
import linewalk.renderer.Layer;
import linewalk.renderer.Look;
import linewalk.renderer.Moment;
import linewalk.renderer.Paper;
import linewalk.renderer.PrintBook;
import linewalk.renderer.PrintJob;
import linewalk.renderer.SetFacts;
import linewalk.renderer.Subject;
import linewalk.renderer.TracePrint;
import linewalk.renderer.ink.Palette;

/** Traces of one set on paper and in words. */
record Prints(LoadedSet loaded, Paper paper, Look look, Set<Layer> hidden) {

    void write(Trace trace, Path file) {
        write(job(trace), file);
    }

    void write(PrintJob job, Path file) {
        AtomicFile.write(file, stream -> TracePrint.write(job, stream));
    }

    void write(List<PrintBook.Chapter> chapters, Path file) {
        AtomicFile.write(file, stream -> PrintBook.write(chapters, stream));
    }

    void walk(Trace trace) {
        PrintStream text = Output.text();
        CycleChart.Step step = trace.question().step() == null
                ? null
                : loaded.chart().find(trace.question().step()).orElse(null);
        TracePrint.walk(job(Subject.of(trace), new Moment(step, null, null))).forEach(text::println);
    }

    PrintJob job(Trace trace) {
        return job(Subject.of(trace), moment(trace.question().step()));
    }

    PrintJob job(Subject subject, Moment moment) {
        return new PrintJob(facts(), subject, moment, paper, look, hidden, LocalDate.now());
    }

    /** With the step before it in the chart, the last before the first: the cycle goes round. */
    Moment moment(String step) {
        if (step == null) {
            return Moment.AT_REST;
        }
        List<CycleChart.Step> all = loaded.chart().steps();
        Steps steps = loaded.steps();
        int at = all.indexOf(loaded.chart().find(step).orElse(null));
        StepState now = steps.get(step);
        return Moment.of(now, all.size() < 2 ? null : steps.all().get((at + all.size() - 1) % all.size()));
    }

    private SetFacts facts() {
        return new SetFacts(
                loaded.title(),
                loaded.set(),
                loaded.itemNumbers(),
                loaded.parts(),
                loaded.folder()::source,
                Palette.OWN);
    }
}
