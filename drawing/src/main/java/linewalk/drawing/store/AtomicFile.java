package linewalk.drawing.store;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
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
        Path folder = file.toAbsolutePath().getParent();
        Path temporary = null;
        try {
            Files.createDirectories(folder);
            // not createTempFile, whose files are shut to everyone but the owner: a print is for the crew
            temporary = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
            try (OutputStream out =
                    new BufferedOutputStream(Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW))) {
                content.writeTo(out);
            }
            move(temporary, file);
        } catch (IOException e) {
            throw new UserError(
                    "cannot write " + file + ": " + reason(e) + "; choose a folder that can be written to", e);
        } finally {
            discard(temporary);
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
        if (temporary == null) {
            return;
        }
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            temporary.toFile().deleteOnExit();
        }
    }
}
