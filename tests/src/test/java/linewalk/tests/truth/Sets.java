package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Drawings with truths: some are kept in the tests' resources, some beside the repository, not in it. */
public final class Sets {

    /** Those beside the repository, without what follows the name: the drawing ends in .pdf. */
    static final List<String> SHARED =
            List.of("set-d/set-d", "real/psu-board", "real/two-pids", "real/processor-board-rot90");

    private static final Path OWN = Path.of("src/test/resources/sets");

    private Sets() {}

    /** All sets in the tests' resources. */
    static List<Path> own() throws IOException {
        try (Stream<Path> sets = Files.list(OWN)) {
            return sets.sorted().toList();
        }
    }

    static Path own(String name) {
        return OWN.resolve(name);
    }

    /** In {@code shared/drawings} beside the repository's root or above it. */
    public static Optional<Path> shared(String name) {
        Path root = Path.of("..").toAbsolutePath().normalize();
        for (Path at = root.getParent(); at != null; at = at.getParent()) {
            Path found = at.resolve("shared/drawings").resolve(name);
            if (Files.exists(found)) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    static JsonNode json(Path file) {
        try {
            return new ObjectMapper().readTree(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
