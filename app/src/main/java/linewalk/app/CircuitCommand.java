package linewalk.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import linewalk.drawing.CycleChart;
import linewalk.drawing.UserError;
import linewalk.linker.Excerpt;
import linewalk.linker.Excerpts;
import linewalk.renderer.PrintBook;
import linewalk.renderer.PrintJob;
import linewalk.renderer.Subject;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "circuit",
        description = "Print the circuit of an actuator, of a pump, or of the whole set, at rest or in a step.",
        footer = {
            "",
            "Example: linewalk circuit ferry-ramp --actuator CYL1 --step Raise --out cyl1.pdf",
            "Example: linewalk circuit ferry-ramp --actuator CYL1 --all-steps --out cyl1-cycle.pdf",
            "Example: linewalk circuit ferry-ramp --pump P1 --paper A1 --out pump.pdf",
            "Example: linewalk circuit ferry-ramp --out whole.pdf",
            "A print is only as sure as the drawing and its reading: check it on the machine before any work."
        })
final class CircuitCommand implements Callable<Integer> {

    /** At most one of them. */
    static final class Of {
        @Option(names = "--actuator", paramLabel = "TAG", description = "All between this actuator and pump and tank.")
        private String actuator;

        @Option(names = "--pump", paramLabel = "TAG", description = "All that this pump's oil may come to.")
        private String pump;
    }

    /** At most one of them. */
    static final class When {
        @Option(
                names = "--step",
                paramLabel = "NAME",
                description = "A step of the cycle chart, by number or name; left out: at rest, as drawn.")
        private String step;

        @Option(names = "--all-steps", description = "Every step of the cycle chart, with bookmarks.")
        private boolean all;
    }

    @Parameters(paramLabel = "SET", description = "The set's folder.")
    private Path path;

    @ArgGroup
    private Of of = new Of();

    @ArgGroup
    private When when = new When();

    @Mixin
    private PrintOptions printing;

    @Override
    public Integer call() {
        PrintFile print = printing.file();
        if (print == null) {
            throw new UserError("circuit wants a file to print to, such as --out circuit.pdf");
        }
        LoadedSet loaded = LoadedSet.load(path);
        Prints prints = new Prints(loaded, printing.form());
        Excerpt excerpt = excerpt(new Excerpts(loaded.set()));
        if (when.all && loaded.chart().steps().isEmpty()) {
            throw new UserError("--all-steps wants a cycle chart: the set has no cycle.csv or cycle.xlsx");
        }
        List<PrintBook.Chapter> chapters = new ArrayList<>();
        if (when.all) {
            for (CycleChart.Step s : loaded.chart().steps()) {
                chapters.add(chapter(s.title(), prints.job(excerpt, s.title())));
            }
        } else {
            chapters.add(chapter(Subject.of(excerpt).title(), prints.job(excerpt, when.step)));
        }
        prints.writeChapters(chapters, print);
        return 0;
    }

    private static PrintBook.Chapter chapter(String title, PrintJob job) {
        return new PrintBook.Chapter(title, List.of(job));
    }

    private Excerpt excerpt(Excerpts excerpts) {
        if (of.actuator != null) {
            return excerpts.actuator(of.actuator);
        }
        return of.pump != null ? excerpts.pump(of.pump) : excerpts.whole();
    }
}
