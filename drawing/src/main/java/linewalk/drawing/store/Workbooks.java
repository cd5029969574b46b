package linewalk.drawing.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.UserError;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Tables in spreadsheets: the first sheet, its first filled row as header. The one class that knows the library. */
final class Workbooks {

    static {
        // the library logs through an interface that complains on standard error where no logger is given
        if (System.getProperty("log4j.provider") == null) {
            System.setProperty("log4j.provider", "org.apache.logging.log4j.simple.internal.SimpleProvider");
        }
    }

    private Workbooks() {}

    static Csv.Table read(Path file) {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            return table(file, book);
        } catch (POIXMLException | OpenXML4JRuntimeException | IllegalArgumentException | IOException e) {
            throw new UserError(file + " is no readable .xlsx spreadsheet: " + e.getMessage(), e);
        }
    }

    private static Csv.Table table(Path file, XSSFWorkbook book) {
        Sheet sheet = book.getSheetAt(0);
        DataFormatter words = new DataFormatter(java.util.Locale.ROOT);
        FormulaEvaluator formulas = book.getCreationHelper().createFormulaEvaluator();
        Map<Integer, String> header = new LinkedHashMap<>();
        List<Csv.Row> rows = new ArrayList<>();
        for (Row row : sheet) {
            Map<Integer, String> cells = new LinkedHashMap<>();
            for (Cell c : row) {
                String text = words.formatCellValue(c, formulas).strip();
                if (!text.isEmpty()) {
                    cells.put(c.getColumnIndex(), text);
                }
            }
            if (header.isEmpty()) {
                header.putAll(cells);
            } else if (!cells.isEmpty()) {
                rows.add(new Csv.Row(row.getRowNum() + 1, named(file, row.getRowNum() + 1, cells, header)));
            }
        }
        return new Csv.Table(file, List.copyOf(header.values()), rows);
    }

    private static Map<String, String> named(
            Path file, int row, Map<Integer, String> cells, Map<Integer, String> header) {
        Map<String, String> named = new LinkedHashMap<>();
        cells.forEach((column, text) -> {
            if (!header.containsKey(column)) {
                throw new UserError(file + ", line " + row + ", column " + (column + 1) + ": '" + text
                        + "' stands in a column without a heading");
            }
            named.put(header.get(column), text);
        });
        return named;
    }
}
