package linewalk.drawing.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import linewalk.drawing.CycleChart;
import linewalk.drawing.HandTag;
import linewalk.drawing.Part;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import linewalk.drawing.UserError;

/** A set's folder: what people keep in it is read afresh at each call. */
public final class SetFolder {

    private final Path folder;

    private SetFolder(Path folder) {
        this.folder = folder;
    }

    /** Opens an existing set. */
    public static SetFolder open(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new UserError(
                    "there is no set folder " + folder + "; make one with: linewalk import FILE.pdf --into " + folder);
        }
        if (!Files.exists(folder.resolve("set.json"))) {
            throw new UserError(
                    folder + " is no set folder: it has no set.json; make one with: linewalk import FILE.pdf"
                            + " --into " + folder);
        }
        return new SetFolder(folder);
    }

    /** Opens or makes a set; the folder itself is made with the first file written. */
    public static SetFolder at(Path folder) {
        return new SetFolder(folder);
    }

    /** Builds the readers of a set's files; they are built at first use otherwise. */
    public static void prepare() {
        Json.MAPPER.readerFor(SheetReading.class);
        Json.MAPPER.readerFor(SetSettings.class);
    }

    public Path path() {
        return folder;
    }

    /** The set's settings; defaults where there is no set.json yet. */
    public SetSettings settings() {
        Path file = folder.resolve("set.json");
        return Files.exists(file) ? Json.read(file, SetSettings.class) : new SetSettings(null, null, null);
    }

    public void write(SetSettings settings) {
        Json.write(folder.resolve("set.json"), settings);
    }

    /** Where a source named in the settings lies. */
    public Path source(String name) {
        return folder.resolve(name).normalize();
    }

    public List<HandTag> tags() {
        return TagFile.read(folder);
    }

    /** Adds a tag to {@code tags.json}. */
    public void add(HandTag tag) {
        TagFile.add(folder, tag);
    }

    public CycleChart chart() {
        return ChartFile.read(folder);
    }

    public List<Part> parts() {
        return PartsFile.read(folder);
    }

    public ReadingCache readings() {
        return new ReadingCache(folder.resolve(".read"));
    }

    public Map<String, Integer> itemNumbers(Collection<String> designations) {
        return ItemRegister.numbers(folder, designations);
    }
}
