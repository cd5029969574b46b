package linewalk.tests;

import static linewalk.tests.Run.fine;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was read once is not read again, unless its page changed; what is kept may be lost or spoilt without harm. */
class CacheTest {

    /** Marks a kept reading as old; one written since has another time. */
    private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

    @TempDir
    Path folder;

    private Path pdf;
    private Path set;
    private String before;

    @BeforeEach
    void importOnce() {
        pdf = TwoSheets.firstIssue().drawTo(folder.resolve("two.pdf"));
        set = folder.resolve("set");
        fine("import", pdf, "--into", set);
        before = fine("export", set).out();
        readings().keySet().forEach(r -> age(set.resolve(".read").resolve(r)));
    }

    private static void age(Path file) {
        try {
            Files.setLastModifiedTime(file, LONG_AGO);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Kept readings, a page each, and whether each was written since the first import; the index is left out. */
    private Map<String, Boolean> readings() {
        Map<String, Boolean> written = new TreeMap<>();
        try (Stream<Path> files = Files.list(set.resolve(".read"))) {
            for (Path f : files.toList()) {
                if (!f.getFileName().toString().startsWith("index")) {
                    written.put(
                            f.getFileName().toString(),
                            !Files.getLastModifiedTime(f).equals(LONG_AGO));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return written;
    }

    private Set<String> writtenSince() {
        return readings().entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    private List<Path> kept() {
        return readings().keySet().stream()
                .map(r -> set.resolve(".read").resolve(r))
                .toList();
    }

    @Test
    void anUnchangedFileIsNotReadAgain() {
        assertThat(readings()).hasSize(2);
        fine("import", pdf, "--into", set);
        assertThat(fine("export", set).out()).isEqualTo(before);
        assertThat(readings()).hasSize(2);
        assertThat(writtenSince()).isEmpty();
    }

    /** The kept reading itself is what comes out: changed by hand, the change shows. */
    @Test
    void whatIsKeptIsWhatIsUsed() throws IOException {
        for (Path r : kept()) {
            Files.writeString(r, Files.readString(r).replace("FROM SHEET 1", "KEPT WORDS"));
        }
        assertThat(fine("export", set).out()).contains("KEPT WORDS");
    }

    @Test
    void aFileThatWasOnlyCopiedIsNotReadAgain() throws IOException {
        Files.setLastModifiedTime(pdf, LONG_AGO);
        assertThat(fine("export", set).out()).isEqualTo(before);
        assertThat(writtenSince()).isEmpty();
    }

    @Test
    void onlyThePageThatChangedIsReadAgain() {
        new TwoSheets(3, "TO SHEET 2").drawTo(pdf);
        assertThat(fine("export", set).out()).isNotEqualTo(before);
        assertThat(writtenSince()).hasSize(1);
        assertThat(readings()).as("both old pages and the new one").hasSize(3);
    }

    @Test
    void aReadingThatWasDeletedIsMadeAgain() throws IOException {
        Files.delete(kept().get(0));
        assertThat(fine("export", set).out()).isEqualTo(before);
        assertThat(writtenSince()).hasSize(1);
        assertThat(readings()).hasSize(2);
    }

    @Test
    void aSpoiltReadingIsIgnoredAndMadeAgain() throws IOException {
        Files.writeString(kept().get(0), "{\"page\": ");
        Files.write(kept().get(1), new byte[0]);
        assertThat(fine("export", set).out()).isEqualTo(before);
        assertThat(writtenSince()).hasSize(2);
    }

    @Test
    void aSpoiltIndexIsIgnored() throws IOException {
        try (Stream<Path> files = Files.list(set.resolve(".read"))) {
            for (Path f : files.filter(x -> x.getFileName().toString().startsWith("index"))
                    .toList()) {
                Files.writeString(f, "]");
            }
        }
        assertThat(fine("export", set).out()).isEqualTo(before);
        assertThat(writtenSince()).isEmpty();
    }

    @Test
    void anotherPatternOfTheSetMeansReadingAgain() throws IOException {
        Path settings = set.resolve("set.json");
        String text = Files.readString(settings);
        assertThat(text).contains("\"patterns\" : [ ]");
        Files.writeString(settings, text.replace("\"patterns\" : [ ]", "\"patterns\" : [\"GO (?<sheet>[0-9]+)\"]"));
        fine("export", set);
        assertThat(writtenSince()).hasSize(2);
    }
}
