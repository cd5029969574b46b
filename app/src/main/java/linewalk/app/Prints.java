package linewalk.app;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.CycleChart;
import linewalk.drawing.UserError;
import linewalk.drawing.store.AtomicFile;
import linewalk.linker.Excerpt;
import linewalk.linker.Steps;
import linewalk.linker.Trace;
import linewalk.linker.step.StepState;
import linewalk.renderer.Moment;
import linewalk.renderer.PrintBook;
import linewalk.renderer.PrintForm;
import linewalk.renderer.PrintJob;
import linewalk.renderer.SetFacts;
import linewalk.renderer.Subject;
import linewalk.renderer.TracePrint;
import linewalk.renderer.ink.Palette;
import linewalk.renderer.sheet.Book;

/** Traces of one set on paper and in words. */
record Prints(LoadedSet loaded, PrintForm form) {

    /** A PDF for each trace; pictures of all pages in one row, whichever trace they are of. */
    void write(List<Trace> traces, PrintFile file) {
        if (file.isPdf()) {
            for (int i = 0; i < traces.size(); i++) {
                PrintJob job = job(traces.get(i));
                AtomicFile.write(file.numbered(i + 1), stream -> TracePrint.write(job, stream));
            }
        } else {
            List<PrintJob> jobs = traces.stream().map(this::job).toList();
            writeChapters(List.of(new PrintBook.Chapter("", jobs)), file);
        }
    }

    /** One PDF, or pictures of all pages. */
    void writeChapters(List<PrintBook.Chapter> chapters, PrintFile file) {
        try (Book book = PrintBook.book(chapters, file.medium())) {
            Map<Path, AtomicFile.Content> contents = new LinkedHashMap<>();
            for (int i = 0; i < book.files(); i++) {
                int n = i;
                contents.put(file.numbered(n + 1), stream -> book.write(n, stream));
            }
            AtomicFile.writeAll(contents);
            warnOfLeftovers(file, book.files());
        } catch (IOException e) {
            throw new UserError("cannot make the print " + file.path() + ": " + e.getMessage(), e);
        }
    }

    /** A longer print made earlier under the same name must not be taken for a part of this one. */
    private static void warnOfLeftovers(PrintFile file, int written) {
        Path next = file.numbered(written + 1);
        if (Files.exists(next)) {
            System.err.println(
                    "linewalk: " + next + " is of an earlier print and no page of this one, which has " + written);
        }
    }

    void walk(Trace trace) {
        PrintStream text = Output.text();
        CycleChart.Step step = trace.question().step() == null
                ? null
                : loaded.chart().find(trace.question().step()).orElse(null);
        TracePrint.walk(job(Subject.of(trace), Moment.named(step))).forEach(text::println);
    }

    PrintJob job(Trace trace) {
        return job(Subject.of(trace), moment(trace.question().step()));
    }

    private PrintJob job(Subject subject, Moment moment) {
        return new PrintJob(facts(), subject, moment, form, LocalDate.now());
    }

    /** With the step before it in the chart, the last before the first: the cycle goes round. */
    private Moment moment(String step) {
        if (step == null) {
            return Moment.AT_REST;
        }
        List<CycleChart.Step> all = loaded.chart().steps();
        Steps steps = loaded.steps();
        StepState now = steps.get(step);
        int at = all.indexOf(now.step());
        StepState before = all.size() < 2 ? null : steps.all().get((at + all.size() - 1) % all.size());
        return new Moment(now.step(), now, before, null);
    }

    /** A circuit tells by itself which way oil goes; a path is told. */
    PrintJob job(Excerpt excerpt, String step) {
        Moment moment = moment(step);
        return job(
                Subject.of(excerpt),
                step == null ? moment : moment.with(loaded.steps().flows(step)));
    }

    private SetFacts facts() {
        return new SetFacts(
                loaded.title(),
                loaded.set(),
                loaded.itemNumbers(),
                loaded.parts(),
                loaded.folder()::source,
                Palette.named(loaded.folder().settings().palette()));
    }
}
