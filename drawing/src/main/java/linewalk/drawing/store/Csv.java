package linewalk.drawing.store;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.UserError;

/** Tables with a header row; cells by column name, empty cells left out. */
final class Csv {

    private static final CsvMapper MAPPER = CsvMapper.builder()
            .enable(CsvParser.Feature.TRIM_SPACES)
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .enable(CsvParser.Feature.FAIL_ON_MISSING_HEADER_COLUMNS)
            .build();

    /** A row and the line it stands on. */
    record Row(int line, Map<String, String> cells) {
        String get(String column) {
            return cells.get(column);
        }
    }

    /** A table: its columns in order, its rows. */
    record Table(Path file, List<String> columns, List<Row> rows) {
        UserError wrong(Row row, String column, String why) {
            int at = columns.indexOf(column) + 1;
            return new UserError(file + ", line " + row.line() + ", column " + at + " (" + column + "): " + why);
        }
    }

    private Csv() {}

    static Table read(Path file) {
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            return parse(file, text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (JacksonException e) {
            throw Json.malformed(file, e);
        } catch (IOException e) {
            throw new UserError("cannot read " + file + ": " + e.getMessage(), e);
        }
    }

    private static Table parse(Path file, String text) throws IOException {
        CsvSchema header = CsvSchema.emptySchema().withHeader();
        try (MappingIterator<Map<String, String>> rows =
                MAPPER.readerFor(Map.class).with(header).readValues(text)) {
            List<Row> out = new ArrayList<>();
            while (rows.hasNextValue()) {
                int line = rows.getCurrentLocation().getLineNr();
                Map<String, String> cells = new LinkedHashMap<>(rows.nextValue());
                cells.values().removeIf(String::isBlank);
                out.add(new Row(line, cells));
            }
            List<String> columns = new ArrayList<>();
            ((CsvSchema) rows.getParserSchema()).forEach(c -> columns.add(c.getName()));
            return new Table(file, columns, out);
        }
    }
}
