package linewalk.app;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "export",
        description = "Print the linked set as one JSON object for other programs.",
        footer = {"", "Example: linewalk export ferry-ramp --format json > ferry-ramp.json"})
final class ExportCommand implements Callable<Integer> {

    enum Format {
        json
    }

    @Parameters(paramLabel = "SET", description = "The set's folder.")
    private Path set;

    @Option(names = "--format", defaultValue = "json", description = "${COMPLETION-CANDIDATES}")
    private Format format;

    @Override
    public Integer call() {
        LoadedSet loaded = LoadedSet.load(set);
        Output.json(new ExportJson(loaded.checked(), loaded.steps().all()).toJson());
        return 0;
    }
}
