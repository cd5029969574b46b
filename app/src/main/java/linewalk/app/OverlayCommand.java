package linewalk.app;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import linewalk.drawing.Sheet;
import linewalk.drawing.UserError;
import linewalk.drawing.store.AtomicFile;
import linewalk.renderer.overlay.OverlayJob;
import linewalk.renderer.overlay.OverlayPrint;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "overlay",
        description = "Draw what was read over the original sheets, to be checked by eye.",
        footer = {
            "",
            "Example: linewalk overlay ferry-ramp --sheet 3 --out sheet-3-read.pdf",
            "Readings are a program's: check them on the drawing and on the machine."
        })
final class OverlayCommand implements Callable<Integer> {

    @Parameters(paramLabel = "SET", description = "The set's folder.")
    private Path path;

    @Option(names = "--out", required = true, paramLabel = "FILE.pdf", description = "The file to write.")
    private Path out;

    @Option(names = "--sheet", paramLabel = "NAME", description = "Only this sheet; may be repeated.")
    private List<String> names = List.of();

    @Override
    public Integer call() {
        if (!out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new UserError("overlays are PDF files: name one such as " + out + ".pdf");
        }
        LoadedSet loaded = LoadedSet.load(path);
        List<Sheet> sheets = chosen(loaded.set().sheets());
        loaded.folder()
                .settings()
                .sources()
                .forEach(s -> Copies.keepOff(loaded.folder().source(s), out));
        OverlayJob job = new OverlayJob(loaded.set(), sheets, loaded.folder()::source, LocalDate.now(), loaded.title());
        try (PageProgress progress = new PageProgress(out.toString())) {
            AtomicFile.write(
                    out, stream -> OverlayPrint.write(job, stream, done -> progress.pages(done, sheets.size())));
        }
        Output.text()
                .println(out + ": " + sheets.size() + (sheets.size() == 1 ? " sheet" : " sheets")
                        + "; check the readings against the drawing");
        return 0;
    }

    private List<Sheet> chosen(List<Sheet> all) {
        if (names.isEmpty()) {
            return all;
        }
        List<String> unknown = new ArrayList<>(names);
        unknown.removeIf(n -> all.stream().anyMatch(s -> s.name().equalsIgnoreCase(n)));
        if (!unknown.isEmpty()) {
            throw new UserError("the set has no sheet " + unknown.get(0) + "; its sheets are "
                    + all.stream().map(Sheet::name).collect(Collectors.joining(", ")));
        }
        return all.stream()
                .filter(s -> names.stream().anyMatch(n -> s.name().equalsIgnoreCase(n)))
                .toList();
    }
}
