package linewalk.samples;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import linewalk.samples.machine.LinkSpan;
import linewalk.samples.machine.Machine;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.sheet.SetDrawing;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.truth.ChartWriter;
import linewalk.samples.truth.TagsWriter;
import linewalk.samples.truth.TruthWriter;

/** Writes the invented demo machine, a ferry link-span, as a set folder. */
public final class DemoSet {
    private static final List<String> FILES =
            List.of("link-span.pdf", "truth.json", "tags.json", "cycle.csv", "parts.csv");
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private DemoSet() {}

    /**
     * Writes link-span.pdf, truth.json, tags.json, cycle.csv and parts.csv into the folder, made if it is missing;
     * files of these names are replaced, and none is unless all could be written. Same style, same bytes.
     *
     * @throws IOException if the folder cannot be written
     */
    public static void write(Path folder, DraftingStyle style) throws IOException {
        Files.createDirectories(folder);
        Path work = Files.createTempDirectory(folder.toAbsolutePath(), ".link-span-");
        try {
            writeAll(work, style);
            for (String file : FILES) {
                Files.move(
                        work.resolve(file),
                        folder.resolve(file),
                        StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            for (String file : FILES) {
                Files.deleteIfExists(work.resolve(file));
            }
            Files.deleteIfExists(work);
        }
    }

    private static void writeAll(Path folder, DraftingStyle style) throws IOException {
        Machine machine = machine(style);
        List<DrawnSheet> sheets;
        try (OutputStream out = Files.newOutputStream(folder.resolve("link-span.pdf"))) {
            sheets = new SetDrawing(machine, style).write(out);
        }
        ChartWriter charts = new ChartWriter(machine, style.usUnits());
        writeJson(folder.resolve("truth.json"), new TruthWriter(machine, sheets).truth());
        writeJson(folder.resolve("tags.json"), new TagsWriter(machine, sheets).tags());
        Files.writeString(folder.resolve("cycle.csv"), charts.cycle());
        Files.writeString(folder.resolve("parts.csv"), charts.parts());
    }

    /**
     * The drawing alone, of the same machine without drafting errors but for the lines of which one end was never drawn.
     *
     * @throws IOException if the file cannot be written
     */
    public static void writeCorrect(Path pdf, DraftingStyle style) throws IOException {
        try (OutputStream out = Files.newOutputStream(pdf)) {
            new SetDrawing(machine(style).withTwoEndedLinesRight(), style).write(out);
        }
    }

    static Machine machine(DraftingStyle style) {
        return style.deckGear() ? LinkSpan.describeWithDeckGear() : LinkSpan.describe();
    }

    private static void writeJson(Path file, Object tree) throws IOException {
        Files.writeString(file, MAPPER.writeValueAsString(tree) + "\n");
    }

    /** Arguments: folder and style name; all styles, a folder each, where no style is named. */
    public static void main(String... args) throws IOException {
        Path folder = Path.of(args[0]);
        if (args.length > 1) {
            write(folder, DraftingStyle.named(args[1]));
            return;
        }
        for (DraftingStyle style : DraftingStyle.ALL) {
            write(folder.resolve(style.name()), style);
        }
    }
}
