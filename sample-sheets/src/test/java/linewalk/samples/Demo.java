package linewalk.samples;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.sheet.SetDrawing;
import linewalk.samples.style.DraftingStyle;

/** The demo set written once a style for all tests. */
record Demo(DraftingStyle style, Path folder, JsonNode truth, JsonNode tags) {
    private static final Map<String, Demo> WRITTEN = new ConcurrentHashMap<>();

    static Stream<Demo> all() {
        return DraftingStyle.ALL.stream().map(style -> WRITTEN.computeIfAbsent(style.name(), name -> written(style)));
    }

    private static Demo written(DraftingStyle style) {
        try {
            Path folder = Files.createTempDirectory("demo-");
            DemoSet.write(folder, style);
            ObjectMapper mapper = new ObjectMapper();
            JsonNode truth = mapper.readTree(folder.resolve("truth.json").toFile());
            JsonNode tags = mapper.readTree(folder.resolve("tags.json").toFile());
            return new Demo(style, folder, truth, tags);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    List<DrawnSheet> sheets() throws IOException {
        return new SetDrawing(DemoSet.machine(style), style).write(new ByteArrayOutputStream());
    }

    Path pdf() {
        return folder.resolve("link-span.pdf");
    }

    List<JsonNode> list(String name) {
        return listOf(truth.get(name));
    }

    JsonNode reference(String id) {
        return list("references").stream()
                .filter(reference -> reference.get("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static List<JsonNode> listOf(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }

    static List<String> textsOf(JsonNode array) {
        return listOf(array).stream().map(JsonNode::asText).toList();
    }

    @Override
    public String toString() {
        return style.name();
    }
}
