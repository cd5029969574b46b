package linewalk.app;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import linewalk.drawing.CycleChart;
import linewalk.drawing.store.AtomicFile;
import linewalk.linker.Trace;
import linewalk.renderer.Look;
import linewalk.renderer.Paper;
import linewalk.renderer.PrintBook;
import linewalk.renderer.PrintJob;
import linewalk.renderer.TracePrint;

/** Traces of one set on paper and in words. */
record Prints(LoadedSet loaded, Paper paper, Look look) {

    void write(Trace trace, Path file) {
        PrintJob job = job(trace);
        AtomicFile.write(file, stream -> TracePrint.write(job, stream));
    }

    void write(List<PrintBook.Chapter> chapters, Path file) {
        AtomicFile.write(file, stream -> PrintBook.write(chapters, stream));
    }

    void walk(Trace trace) {
        PrintStream text = Output.text();
        TracePrint.walk(job(trace)).forEach(text::println);
    }

    PrintJob job(Trace trace) {
        String step = trace.question().step();
        CycleChart.Step chosen = step == null ? null : loaded.chart().find(step).orElse(null);
        return new PrintJob(
                loaded.set(),
                trace,
                chosen,
                loaded.itemNumbers(),
                loaded.parts(),
                loaded.folder()::source,
                paper,
                look,
                LocalDate.now(),
                loaded.title());
    }
}
