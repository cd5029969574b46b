package linewalk.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.Rule;
import linewalk.drawing.SetSettings;
import linewalk.drawing.UserError;
import linewalk.drawing.store.SetFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "import",
        description = "Read drawing files into a set folder. Files stay where they are and are never changed.",
        footer = {"", "Example: linewalk import pump-room.pdf deck.pdf --into ferry-ramp"})
final class ImportCommand implements Callable<Integer> {

    @Parameters(arity = "1..*", paramLabel = "FILE.pdf", description = "Drawing files, in the order of the set.")
    private List<Path> files;

    @Option(names = "--into", required = true, paramLabel = "SET", description = "The set's folder; made if missing.")
    private Path into;

    @Override
    public Integer call() {
        for (Path file : files) {
            if (!Files.isRegularFile(file)) {
                throw new UserError("there is no file " + file + "; check the name and the folder");
            }
        }
        SetFolder folder = SetFolder.at(into);
        SetSettings settings = folder.settings();
        List<String> sources = new ArrayList<>(settings.sources());
        for (Path file : files) {
            String name = nameIn(into, file);
            if (!sources.contains(name)) {
                sources.add(name);
            }
        }
        SetSettings wider = new SetSettings(
                sources, settings.patterns(), settings.standardGrid(), settings.palette(), settings.rules());
        if (!wider.equals(settings)) {
            LoadedSet.checkReadable(folder, wider);
            folder.write(wider);
        }
        print(LoadedSet.load(into));
        return 0;
    }

    /** A file in the set's folder keeps its name; others are named by the way to them. */
    private static String nameIn(Path folder, Path file) {
        Path base = folder.toAbsolutePath().normalize();
        Path absolute = file.toAbsolutePath().normalize();
        return absolute.startsWith(base) ? base.relativize(absolute).toString() : absolute.toString();
    }

    private void print(LoadedSet loaded) {
        DrawingSet set = loaded.set();
        loaded.itemNumbers();
        long mated = set.references().stream().filter(r -> !r.mates().isEmpty()).count();
        System.out.printf(
                "%s: %d sheets, %d references (%d with a mate), %d components, %d lines, %d findings%n",
                into,
                set.sheets().size(),
                set.references().size(),
                mated,
                set.components().size(),
                set.lines().size(),
                set.findings().size());
        System.out.println("See what does not agree with: linewalk check " + into);
        printUnread(set);
    }

    /** Else pages without any letters would look like pages without anything on them. */
    private static void printUnread(DrawingSet set) {
        List<Finding> pages = set.findings().stream()
                .filter(f -> f.rule() == Rule.UNREAD && f.page() != null && f.place() == null)
                .toList();
        if (!pages.isEmpty()) {
            System.err.printf(
                    "linewalk: %d of %d pages were not read to the end; page %d of %s: %s%n",
                    pages.size(),
                    set.sheets().size(),
                    pages.get(0).page().page(),
                    pages.get(0).page().source(),
                    pages.get(0).message());
        }
    }
}
