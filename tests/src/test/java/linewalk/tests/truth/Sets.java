package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Drawings with truths: some are kept in the tests' resources, some beside the repository, not in it. */
final class Sets {

    private Sets() {}

    static Path own(String name) {
        return Path.of("src/test/resources/sets").resolve(name);
    }

    /** In {@code shared/drawings} beside the repository's root or above it. */
    static Optional<Path> shared(String name) {
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
