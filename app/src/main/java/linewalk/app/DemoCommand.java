package linewalk.app;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import linewalk.drawing.UserError;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "demo",
        description = "Write the drawing set of an invented machine, a ferry ramp, with its findings and three printed"
                + " paths.",
        footer = {"", "Example: linewalk demo out"})
final class DemoCommand implements Callable<Integer> {

    /** A path worth printing: its name and the question. */
    private record Example(String file, List<String> question) {}

    private static final List<Example> EXAMPLES = List.of(
            new Example("pump-to-tank-at-rest", List.of("--from", "0P1")),
            new Example("hoist-cylinder-raise", List.of("--from", "0P1", "--via", "1A1", "--step", "Raise span")),
            new Example("winch-motor-return", List.of("--from", "4M1", "--step", "Heave winch")));

    @Parameters(paramLabel = "FOLDER", description = "A new folder.")
    private Path folder;

    @Option(
            names = "--style",
            defaultValue = "iso",
            description = "Drafting style: iso, asme, house, hops, pieces or bars (default: iso).")
    private String style;

    @Override
    public Integer call() {
        checkNew();
        try {
            DemoSet.write(folder, named());
        } catch (IOException e) {
            throw new UserError("cannot write " + folder + ": choose a folder that can be written to", e);
        }
        run("import", folder.resolve("link-span.pdf").toString(), "--into", folder.toString());
        run("check", folder.toString());
        for (Example e : EXAMPLES) {
            for (String look : List.of("drawn", "cuttings")) {
                trace(e, look);
            }
        }
        Output.text().println("Prints lie in " + folder.resolve("prints"));
        return 0;
    }

    private void checkNew() {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            if (files.findAny().isPresent()) {
                throw new UserError(
                        folder + " is not empty; name a new folder, so that nothing of yours is overwritten");
            }
        } catch (IOException e) {
            throw new UserError(folder + " is no folder that can be used; name a new one", e);
        }
    }

    private DraftingStyle named() {
        return DraftingStyle.ALL.stream()
                .filter(s -> s.name().equals(style))
                .findFirst()
                .orElseThrow(() -> new UserError("there is no drafting style " + style + "; there are "
                        + String.join(
                                ", ",
                                DraftingStyle.ALL.stream()
                                        .map(DraftingStyle::name)
                                        .toList())));
    }

    private void trace(Example e, String look) {
        Path out = folder.resolve("prints").resolve(e.file() + "-" + look + ".pdf");
        List<String> args = new java.util.ArrayList<>(List.of("trace", folder.toString()));
        args.addAll(e.question());
        args.addAll(List.of("--look", look, "--out", out.toString(), "--format", "json"));
        PrintStream console = System.out;
        System.setOut(new PrintStream(java.io.OutputStream.nullOutputStream()));
        try {
            run(args.toArray(String[]::new));
        } finally {
            System.setOut(console);
        }
        Output.text()
                .println(args.subList(0, args.size() - 2).stream()
                        .map(a -> a.contains(" ") ? '"' + a + '"' : a)
                        .collect(java.util.stream.Collectors.joining(" ", "linewalk ", "")));
    }

    private static void run(String... args) {
        CommandLine line = Main.commandLine();
        line.execute(args);
    }
}
