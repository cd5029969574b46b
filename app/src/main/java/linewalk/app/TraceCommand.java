package linewalk.app;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import linewalk.drawing.UserError;
import linewalk.linker.Answer;
import linewalk.linker.Question;
import linewalk.linker.Trace;
import linewalk.linker.Tracer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "trace",
        description =
                "Follow a flow path over all sheets and print it on one. Exit status 1 where there is none, or where"
                        + " it stops at a doubt.",
        footer = {
            "",
            "Example: linewalk trace ferry-ramp --from P1 --via CYL1 --to TANK --step Raise --out raise.pdf",
            "Example: linewalk trace ferry-ramp --from P1 --all-steps --out cycle.pdf",
            "A path is only as sure as the drawing and its reading: check it on the machine before any work."
        })
final class TraceCommand implements Callable<Integer> {

    enum Format {
        text,
        json
    }

    @Parameters(paramLabel = "SET", description = "The set's folder.")
    private Path path;

    @Option(names = "--from", required = true, paramLabel = "TAG[:PORT]", description = "Where the path starts.")
    private String from;

    @Option(names = "--via", paramLabel = "TAG", description = "A part to pass, such as an actuator; may be repeated.")
    private List<String> via = List.of();

    @Option(names = "--to", paramLabel = "TAG[:PORT]", description = "Where it ends; the tank if left out.")
    private String to;

    @Option(
            names = "--step",
            paramLabel = "NAME",
            description = "A step of the cycle chart, by number or name; left out: at rest, as drawn.")
    private String step;

    @Option(
            names = "--all-steps",
            description = "Every step of the cycle chart, one after the other; one print for all, with bookmarks.")
    private boolean allSteps;

    @Option(names = "--any-position", description = "Valves may stand in any position; says which must be shifted.")
    private boolean anyPosition;

    @Option(names = "--cross-doubt", description = "Go on over doubtful joins and mates, and mark them on the print.")
    private boolean crossDoubt;

    @Option(names = "--paths", defaultValue = "1", paramLabel = "N", description = "List up to N paths.")
    private int paths;

    @Mixin
    private PrintOptions printing;

    @Option(names = "--format", defaultValue = "text", description = "${COMPLETION-CANDIDATES} (default: text)")
    private Format format;

    @Override
    public Integer call() {
        PrintFile print = printing.file();
        if (paths < 1) {
            throw new UserError("--paths wants a number of 1 or more");
        }
        if (allSteps && step != null) {
            throw new UserError("--step names one step and --all-steps means all: give one of them");
        }
        LoadedSet loaded = LoadedSet.load(path);
        Tracer tracer = new Tracer(loaded.set(), loaded.chart());
        Prints prints = new Prints(loaded, printing.form());
        if (allSteps) {
            return new AllSteps(loaded, tracer, prints).trace(this::question, format == Format.json, print);
        }
        Answer answer = tracer.trace(question(step));
        if (answer instanceof Answer.Stopped stopped) {
            return stopped(stopped);
        }
        List<Trace> traces = ((Answer.Found) answer).traces();
        if (print != null) {
            prints.write(traces, print);
        }
        if (format == Format.json) {
            Output.json(TraceJson.of(traces, step == null ? null : tracer.state(step), paths > 1));
        } else {
            traces.forEach(prints::walk);
        }
        return 0;
    }

    private Question question(String inStep) {
        return new Question(from, via, to, inStep, anyPosition, crossDoubt, paths);
    }

    private int stopped(Answer.Stopped stopped) {
        if (format == Format.json) {
            Output.json(TraceJson.of(stopped));
        }
        System.err.println("linewalk: no path: " + why(stopped));
        return 1;
    }

    static String why(Answer.Stopped stopped) {
        String remedy = "; to go on over doubts and have them marked: --cross-doubt";
        return stopped.why() + (stopped.atDoubt() ? remedy : "");
    }
}
