package linewalk.linker;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;

/** Drawings with truths that are kept beside the repository, not in it; a test without them says that it was skipped. */
final class Truths {

    private Truths() {}

    static Path folder(String name) {
        Path at = Path.of("").toAbsolutePath();
        Optional<Path> found = Optional.empty();
        for (int up = 0; up < 4 && at != null && found.isEmpty(); up++, at = at.getParent()) {
            Path folder = at.resolve("shared/drawings").resolve(name);
            found = Files.isDirectory(folder) ? Optional.of(folder) : Optional.empty();
        }
        Assumptions.assumeTrue(found.isPresent(), "shared/drawings/" + name + " is not beside the repository");
        return found.get();
    }

    static JsonNode read(Path file) {
        try {
            return new ObjectMapper().readTree(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(x -> texts.add(x.asText()));
        return texts;
    }

    /** A list, or a single value as a list of one; empty for none. */
    static List<String> oneOrMore(JsonNode x) {
        if (x == null || x.isNull() || x.isMissingNode()) {
            return List.of();
        }
        return x.isArray() ? texts(x) : List.of(x.asText());
    }

    static String text(JsonNode x, String field) {
        return x.hasNonNull(field) ? x.get(field).asText() : null;
    }
}
