package linewalk.drawing.store;

import com.fasterxml.jackson.databind.JsonMappingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.HandTag;

/** Hand tags: {@code tags.json}, and the same as {@code tags.csv} with the fields of a tag as columns. */
final class TagFile {

    private record Tags(List<HandTag> tags) {}

    private TagFile() {}

    static List<HandTag> read(Path folder) {
        List<HandTag> tags = new ArrayList<>();
        Path json = folder.resolve("tags.json");
        if (Files.exists(json)) {
            List<HandTag> said = Json.read(json, Tags.class).tags();
            tags.addAll(said == null ? List.of() : said);
        }
        Path csv = folder.resolve("tags.csv");
        if (Files.exists(csv)) {
            tags.addAll(readCsv(csv));
        }
        return tags;
    }

    /** Adds to {@code tags.json}, whatever else it holds. */
    static void add(Path folder, HandTag tag) {
        Path json = folder.resolve("tags.json");
        List<HandTag> tags = new ArrayList<>();
        if (Files.exists(json)) {
            List<HandTag> said = Json.read(json, Tags.class).tags();
            tags.addAll(said == null ? List.of() : said);
        }
        tags.add(tag);
        Json.write(json, new Tags(tags));
    }

    private static List<HandTag> readCsv(Path file) {
        Csv.Table table = Csv.read(file);
        List<HandTag> tags = new ArrayList<>();
        for (Csv.Row row : table.rows()) {
            tags.add(tag(table, row));
        }
        return tags;
    }

    private static HandTag tag(Csv.Table table, Csv.Row row) {
        try {
            return Json.MAPPER.convertValue(row.cells(), HandTag.class);
        } catch (IllegalArgumentException e) {
            throw table.wrong(
                    row,
                    column(e),
                    String.valueOf(e.getMessage()).lines().findFirst().orElse("malformed"));
        }
    }

    private static String column(IllegalArgumentException e) {
        if (e.getCause() instanceof JsonMappingException m && !m.getPath().isEmpty()) {
            return m.getPath().get(0).getFieldName();
        }
        return "tag";
    }
}
