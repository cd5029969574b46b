package linewalk.drawing.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import linewalk.drawing.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is written whole or not at all. */
class AtomicFileTest {

    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    private Path old() throws IOException {
        return Files.writeString(folder.resolve("a.json"), "old");
    }

    @Test
    void writesAndReplaces() throws IOException {
        Path file = old();
        AtomicFile.write(file, out -> out.write(NEW));
        assertThat(file).hasContent("new");
        assertThat(folder).isDirectoryContaining(f -> f.equals(file));
        assertThat(folder.toFile().list()).containsExactly("a.json");
    }

    @Test
    void isOpenToThoseToWhomOtherFilesAre() throws IOException {
        Path file = folder.resolve("print.pdf");
        AtomicFile.write(file, out -> out.write(NEW));
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"), "skipped: no such permissions here");
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(old()));
    }

    @Test
    void makesTheFolderThatIsMissing() {
        Path file = folder.resolve("x/y/a.json");
        AtomicFile.write(file, out -> out.write(NEW));
        assertThat(file).hasContent("new");
    }

    @Test
    void writesNoneOfSeveralWhenOneFails() throws IOException {
        Map<Path, AtomicFile.Content> contents = new LinkedHashMap<>();
        contents.put(old(), out -> out.write(NEW));
        contents.put(folder.resolve("b.json"), out -> {
            throw new IOException("disk is full");
        });
        assertThatThrownBy(() -> AtomicFile.writeAll(contents))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("b.json");
        assertThat(folder.toFile().list()).containsExactly("a.json");
        assertThat(folder.resolve("a.json")).hasContent("old");
    }

    @Test
    void keepsTheOldFileWhenWritingFailsHalfWay() throws IOException {
        Path file = old();
        assertThatThrownBy(() -> AtomicFile.write(file, out -> {
                    out.write(new byte[100_000]);
                    throw new IOException("disk is full");
                }))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("cannot write")
                .hasMessageContaining("disk is full");
        assertThat(file).hasContent("old");
        assertThat(folder.toFile().list()).as("nothing is left beside it").containsExactly("a.json");
    }

    @Test
    void keepsTheOldFileOnAnErrorOfOurOwn() throws IOException {
        Path file = old();
        assertThatThrownBy(() -> AtomicFile.write(file, out -> {
                    out.write(NEW);
                    throw new IllegalStateException("a bug");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(file).hasContent("old");
        assertThat(folder.toFile().list()).containsExactly("a.json");
    }

    @Test
    void aFileInTheFoldersPlaceIsTold() throws IOException {
        Path file = old().resolve("b.json");
        assertThatThrownBy(() -> AtomicFile.write(file, out -> out.write(NEW)))
                .isInstanceOf(UserError.class)
                .hasMessageContaining(file.toString());
        assertThat(folder.resolve("a.json")).hasContent("old");
    }
}
