package linewalk.drawing.store;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import linewalk.drawing.UserError;

/** Writes a file whole or not at all: a temporary file beside it, then a move onto its name. */
public final class AtomicFile {

    /** Fills a stream. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    private AtomicFile() {}

    public static void write(Path file, Content content) {
        writeAll(Map.of(file, content));
    }

    /** Fills all files before the first takes its name, so that a content that fails leaves none. */
    public static void writeAll(Map<Path, Content> contents) {
        Map<Path, Path> temporaries = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, Content> e : contents.entrySet()) {
                fill(e.getKey(), e.getValue(), temporaries);
            }
            for (Map.Entry<Path, Path> e : temporaries.entrySet()) {
                with(e.getKey(), () -> move(e.getValue(), e.getKey()));
            }
        } finally {
            temporaries.values().forEach(AtomicFile::discard);
        }
    }

    private static void fill(Path file, Content content, Map<Path, Path> temporaries) {
        Path folder = file.toAbsolutePath().getParent();
        // not createTempFile, whose files are shut to everyone but the owner: a print is for the crew
        Path temporary = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
        with(file, () -> {
            Files.createDirectories(folder);
            temporaries.put(file, temporary);
            try (OutputStream out =
                    new BufferedOutputStream(Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW))) {
                content.writeTo(out);
            }
        });
    }

    private interface Step {
        void run() throws IOException;
    }

    private static void with(Path file, Step step) {
        try {
            step.run();
        } catch (IOException e) {
            throw new UserError(
                    "cannot write " + file + ": " + reason(e) + "; choose a folder that can be written to", e);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static String reason(IOException e) {
        if (e instanceof java.nio.file.AccessDeniedException) {
            return "no permission";
        }
        if (e instanceof java.nio.file.FileAlreadyExistsException) {
            return "a file stands where the folder should be";
        }
        String message = e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }

    private static void discard(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            temporary.toFile().deleteOnExit();
        }
    }
}
