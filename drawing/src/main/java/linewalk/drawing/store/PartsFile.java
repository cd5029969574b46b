package linewalk.drawing.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.drawing.Part;

/** {@code parts.csv}: columns tag (or designation), description, kind, setting, test_point. */
final class PartsFile {

    private PartsFile() {}

    static List<Part> read(Path folder) {
        Path file = folder.resolve("parts.csv");
        if (!Files.exists(file)) {
            return List.of();
        }
        Csv.Table table = Csv.read(file);
        List<Part> parts = new ArrayList<>();
        for (Csv.Row row : table.rows()) {
            String tag = row.get("tag") == null ? row.get("designation") : row.get("tag");
            if (tag == null) {
                throw table.wrong(row, "tag", "the part has no designation");
            }
            Kind kind =
                    row.get("kind") == null ? null : Kind.find(row.get("kind")).orElse(Kind.UNKNOWN);
            parts.add(new Part(tag, row.get("description"), kind, row.get("setting"), row.get("test_point")));
        }
        return parts;
    }
}
