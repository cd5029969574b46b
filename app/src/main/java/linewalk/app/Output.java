package linewalk.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Standard output in UTF-8, whatever the machine's locale. */
final class Output {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Output() {}

    static PrintStream text() {
        return new PrintStream(System.out, true, StandardCharsets.UTF_8);
    }

    static void json(JsonNode value) {
        text().println(pretty(value));
    }

    static String pretty(JsonNode value) {
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(value);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
