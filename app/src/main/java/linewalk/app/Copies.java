package linewalk.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.UserError;

/** Where copies of a set's sources go: one file, or a folder for several. */
final class Copies {

    private Copies() {}

    /**
     * The file to write for each source, none of which is a source itself.
     *
     * @throws UserError where {@code out} does not fit the number of sources, or would replace one
     */
    static Map<String, Path> of(LoadedSet loaded, Path out) {
        List<String> sources = loaded.folder().settings().sources();
        boolean pdf = out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf");
        Map<String, Path> copies = new LinkedHashMap<>();
        if (sources.size() == 1) {
            if (!pdf) {
                throw new UserError("the copy is a PDF file: name one such as " + out + ".pdf");
            }
            copies.put(sources.get(0), out);
        } else {
            if (pdf) {
                throw new UserError(
                        "the set has " + sources.size() + " files, so their copies go into a folder: name one");
            }
            sources.forEach(
                    s -> copies.put(s, out.resolve(Path.of(s).getFileName().toString())));
        }
        Set<Path> taken = new HashSet<>();
        copies.forEach((s, file) -> {
            if (!taken.add(file)) {
                throw new UserError("two files of the set are called " + file.getFileName() + "; rename one of them");
            }
            sources.forEach(o -> keepOff(loaded.folder().source(o), file));
        });
        return copies;
    }

    /** @throws UserError where the file is the source */
    static void keepOff(Path source, Path file) {
        try {
            if (Files.exists(file) && Files.exists(source) && Files.isSameFile(file, source)) {
                throw new UserError(file + " is one of the set's own drawings; name another file");
            }
        } catch (IOException e) {
            throw new UserError(file + " cannot be looked at; name another file", e);
        }
    }
}
