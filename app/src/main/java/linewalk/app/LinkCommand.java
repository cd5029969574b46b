package linewalk.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import linewalk.drawing.UserError;
import linewalk.drawing.store.AtomicFile;
import linewalk.linker.Answer;
import linewalk.linker.Question;
import linewalk.linker.Trace;
import linewalk.linker.Tracer;
import linewalk.renderer.link.LinkJob;
import linewalk.renderer.link.LinkedCopy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "link",
        description = {
            "Write a copy of the set in which every reference can be pressed and leads to its mate.",
            "The original's bytes stay as they are; links, an outline by sheets and, if wanted, a path are added."
        },
        footer = {
            "",
            "Example: linewalk link ferry-ramp --out ferry-ramp-linked.pdf",
            "Example: linewalk link ferry-ramp --trace P1 --via A1 --out ferry-ramp-raise.pdf",
            "Links follow what was read: check that a link led to the right place before you rely on it."
        })
final class LinkCommand implements Callable<Integer> {

    @Parameters(paramLabel = "SET", description = "The set's folder.")
    private Path path;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE.pdf",
            description = "The copy to write; a folder where the set has several files.")
    private Path out;

    @Option(
            names = "--trace",
            paramLabel = "TAG[:PORT]",
            description = "Add the path from here, on a layer of its own.")
    private String from;

    @Option(names = "--via", paramLabel = "TAG", description = "A part that the path passes; may be repeated.")
    private List<String> via = List.of();

    @Option(names = "--to", paramLabel = "TAG[:PORT]", description = "Where the path ends; the tank if left out.")
    private String to;

    @Option(names = "--step", paramLabel = "NAME", description = "A step of the cycle chart; at rest if left out.")
    private String step;

    @Option(names = "--cross-doubt", description = "The path goes on over doubtful joins and mates.")
    private boolean crossDoubt;

    @Override
    public Integer call() {
        if (from == null && (!via.isEmpty() || to != null || step != null || crossDoubt)) {
            throw new UserError(
                    "--via, --to, --step and --cross-doubt belong to a path: say where it starts with --trace");
        }
        LoadedSet loaded = LoadedSet.load(path);
        Map<String, Path> copies = copies(loaded);
        Optional<Trace> trace = Optional.empty();
        if (from != null) {
            Answer answer = new Tracer(loaded.set(), loaded.chart())
                    .trace(new Question(from, via, to, step, false, crossDoubt, 1));
            if (answer instanceof Answer.Stopped stopped) {
                System.err.println("linewalk: no path: " + TraceCommand.why(stopped));
                return 1;
            }
            trace = Optional.of(((Answer.Found) answer).traces().get(0));
        }
        Map<String, String> names = new LinkedHashMap<>();
        copies.forEach((source, file) -> names.put(source, file.getFileName().toString()));
        LinkJob job = new LinkJob(loaded.set(), loaded.folder()::source, names, trace);
        copies.forEach((source, file) -> write(job, source, file));
        return 0;
    }

    private static void write(LinkJob job, String source, Path file) {
        int[] links = new int[1];
        AtomicFile.write(file, stream -> links[0] = LinkedCopy.write(job, source, stream));
        Output.text().println(file + ": " + links[0] + (links[0] == 1 ? " link" : " links"));
    }

    /** The file to write for each source. */
    private Map<String, Path> copies(LoadedSet loaded) {
        return Copies.of(loaded, out);
    }
}
