package linewalk.drawing.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.PageKey;
import linewalk.drawing.SheetReading;
import linewalk.drawing.UserError;

/**
 * Readings kept in {@code .read/}, safe to delete. A reading is kept under a key of its page's content, so an unchanged
 * page of a changed file is not read again; an index by the file's size and time lets an unchanged file be skipped
 * without opening it. What cannot be read back counts as not there.
 */
public final class ReadingCache {

    /** A source file as it was when it was read. */
    private record Index(String stamp, List<String> keys) {}

    private final Path folder;

    ReadingCache(Path folder) {
        this.folder = folder;
    }

    /** All readings of an unchanged source in page order; empty where one is missing. {@code settings} is part of the stamp. */
    public Optional<List<SheetReading>> find(Path source, String name, String settings) {
        Path index = indexOf(name);
        if (!Files.exists(index)) {
            return Optional.empty();
        }
        Index known = readOrNull(index, Index.class);
        if (known == null || !known.stamp().equals(stamp(source, settings))) {
            return Optional.empty();
        }
        List<SheetReading> readings = new ArrayList<>();
        for (int i = 0; i < known.keys().size(); i++) {
            Optional<SheetReading> r = find(known.keys().get(i), new PageKey(name, i + 1));
            if (r.isEmpty()) {
                return Optional.empty();
            }
            readings.add(r.get());
        }
        return Optional.of(readings);
    }

    /** The reading kept under a key, if it is the same page's. */
    public Optional<SheetReading> find(String key, PageKey page) {
        Path file = folder.resolve(key + ".json");
        SheetReading r = Files.exists(file) ? readOrNull(file, SheetReading.class) : null;
        return Optional.ofNullable(r).filter(x -> x.page().equals(page));
    }

    public void keep(String key, SheetReading reading) {
        AtomicFile.write(folder.resolve(key + ".json"), out -> Json.MAPPER.writeValue(out, reading));
    }

    /** Notes that the source as it is now has these keys, page by page. */
    public void keepIndex(Path source, String name, String settings, List<String> keys) {
        Index index = new Index(stamp(source, settings), keys);
        AtomicFile.write(indexOf(name), out -> Json.MAPPER.writeValue(out, index));
    }

    private Path indexOf(String name) {
        return folder.resolve("index-" + Integer.toHexString(name.hashCode()) + ".json");
    }

    private static String stamp(Path source, String settings) {
        try {
            return Files.size(source) + "-" + Files.getLastModifiedTime(source).toMillis() + "-" + settings;
        } catch (IOException e) {
            throw new UserError("cannot read " + source + ": " + e.getMessage(), e);
        }
    }

    private static <T> T readOrNull(Path file, Class<T> type) {
        try {
            return Json.MAPPER.readValue(Files.readAllBytes(file), type);
        } catch (IOException e) {
            return null;
        }
    }
}
