package linewalk.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Severity;
import linewalk.drawing.UserError;
import linewalk.drawing.store.AtomicFile;
import linewalk.renderer.report.CsvReport;
import linewalk.renderer.report.HtmlReport;
import linewalk.renderer.report.NotedCopy;
import linewalk.renderer.report.Report;
import linewalk.renderer.report.TextReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "check",
        description = "List what does not agree on the drawings. Exit status 1 where there is an error.",
        footer = {
            "",
            "Example: linewalk check ferry-ramp",
            "Example: linewalk check ferry-ramp --format html --out check.html",
            "Example: linewalk check ferry-ramp --format pdf --out with-notes.pdf",
            "Example: linewalk check ferry-ramp --keep 1f0c93ab --reason \"agreed with the yard\""
        })
final class CheckCommand implements Callable<Integer> {

    enum Format {
        text,
        json,
        csv,
        html,
        pdf
    }

    @Parameters(paramLabel = "SET", description = "The set's folder.")
    private Path path;

    @Option(
            names = "--format",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES} (default: text); pdf is the original with a note at each place")
    private Format format;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write to a file; pdf needs it, and a folder where the set has several files.")
    private Path out;

    @Option(names = "--keep", paramLabel = "ID", description = "Keep this finding as it is: writes a tag to tags.json.")
    private String keep;

    @Option(names = "--reason", paramLabel = "WORDS", description = "Why it is kept.")
    private String reason;

    @Override
    public Integer call() {
        if ((keep == null) != (reason == null)) {
            throw new UserError("--keep names a finding and --reason says why it stays: give both");
        }
        if (format == Format.pdf && out == null) {
            throw new UserError("notes go into a copy of the PDF: name it with --out FILE.pdf");
        }
        LoadedSet loaded = LoadedSet.load(path);
        DrawingSet set = loaded.checked();
        if (keep != null) {
            loaded.folder().add(Keep.tag(set, keep, reason));
            set = loaded.checked();
        }
        Report report = new Report(set, loaded.folder()::source, loaded.title(), LocalDate.now());
        if (format == Format.pdf) {
            notes(loaded, report);
        } else {
            tell(loaded, report);
        }
        boolean wrong = set.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR && f.kept() == null);
        return wrong ? 1 : 0;
    }

    private void notes(LoadedSet loaded, Report report) {
        Map<String, Path> copies = Copies.of(loaded, out);
        copies.forEach((source, file) -> {
            int[] notes = new int[1];
            AtomicFile.write(file, stream -> notes[0] = NotedCopy.write(report, source, stream));
            Output.text().println(file + ": " + notes[0] + (notes[0] == 1 ? " note" : " notes"));
        });
    }

    private void tell(LoadedSet loaded, Report report) {
        String text =
                switch (format) {
                    case json -> Output.pretty(new ExportJson(report.set(), List.of()).findings()) + "\n";
                    case csv -> CsvReport.of(report);
                    case html -> HtmlReport.of(report);
                    default -> TextReport.of(report);
                };
        if (out == null) {
            Output.text().print(text);
            return;
        }
        if (out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new UserError(out + " would not be a PDF file; add --format pdf, or name another file");
        }
        loaded.folder()
                .settings()
                .sources()
                .forEach(s -> Copies.keepOff(loaded.folder().source(s), out));
        AtomicFile.write(out, stream -> stream.write(text.getBytes(StandardCharsets.UTF_8)));
    }
}
