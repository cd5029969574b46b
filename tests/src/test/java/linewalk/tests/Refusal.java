package linewalk.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What a command owes to a person whose input it cannot use: one clear line, and everything left as it was. */
final class Refusal {

    private Refusal() {}

    /** Exit status 2 and one line that holds these words. */
    static void isWrongUse(Run run, String... words) {
        isOneLine(run, 2, words);
    }

    static void isOneLine(Run run, int status, String... words) {
        assertThat(run.status()).as(run.err()).isEqualTo(status);
        assertThat(run.err().lines()).as(run.err()).hasSize(1);
        assertThat(run.err())
                .startsWith("linewalk: ")
                .contains(words)
                .doesNotContain("Exception")
                .doesNotContain("\tat ");
    }

    /** All files below a folder and what they hold; empty where there is no folder. */
    static Map<String, String> files(Path folder) {
        if (!Files.exists(folder)) {
            return Map.of();
        }
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path p : all.toList()) {
                String content =
                        Files.isDirectory(p) ? "folder" : new BigInteger(1, Files.readAllBytes(p)).toString(36);
                files.put(folder.relativize(p).toString(), content);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }
}
