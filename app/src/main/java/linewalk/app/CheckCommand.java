package linewalk.app;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.Severity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "check",
        description = "List what does not agree on the drawings. Exit status 1 where there is an error.",
        footer = {"", "Example: linewalk check ferry-ramp"})
final class CheckCommand implements Callable<Integer> {

    enum Format {
        text,
        json
    }

    @Parameters(paramLabel = "SET", description = "The set's folder.")
    private Path path;

    @Option(names = "--format", defaultValue = "text", description = "${COMPLETION-CANDIDATES}")
    private Format format;

    @Override
    public Integer call() {
        DrawingSet set = LoadedSet.load(path).checked();
        if (format == Format.json) {
            Output.json(new ExportJson(set, List.of()).findings());
        } else {
            print(set);
        }
        boolean wrong = set.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR);
        return wrong ? 1 : 0;
    }

    static void print(DrawingSet set) {
        PrintStream out = Output.text();
        for (Finding f : set.findings()) {
            out.println(word(f.severity()) + "  " + f.rule().word() + "  " + where(set, f) + ": " + f.message());
            if (f.remedy() != null) {
                out.println("    likely remedy: " + f.remedy());
            }
        }
        List<String> counts = java.util.stream.Stream.of(Severity.values())
                .map(s -> count(set, s) + " " + word(s) + (count(set, s) == 1 ? "" : "s"))
                .toList();
        out.println(set.sheets().size() + " sheets, " + set.references().size() + " references: "
                + String.join(", ", counts));
    }

    private static long count(DrawingSet set, Severity s) {
        return set.findings().stream().filter(f -> f.severity() == s).count();
    }

    private static String where(DrawingSet set, Finding f) {
        if (f.page() == null) {
            return "the set";
        }
        return f.place() == null ? "sheet " + set.getSheet(f.page()).name() : set.address(f.page(), f.place());
    }

    private static String word(Severity s) {
        return s.name().toLowerCase(Locale.ROOT);
    }
}
