package linewalk.drawing.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import linewalk.drawing.CycleChart;
import linewalk.drawing.UserError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The cycle chart as a spreadsheet. */
class ChartBookTest {

    @TempDir
    Path folder;

    /** Cells are text, numbers or booleans; null is an empty cell. */
    private CycleChart chart(Object[]... rows) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(folder.resolve("cycle.xlsx"))) {
            Sheet sheet = book.createSheet();
            for (int r = 0; r < rows.length; r++) {
                Row row = sheet.createRow(r);
                for (int c = 0; c < rows[r].length; c++) {
                    fill(row, c, rows[r][c]);
                }
            }
            book.write(out);
        }
        return SetFolder.at(folder).chart();
    }

    private static void fill(Row row, int c, Object value) {
        if (value instanceof Number n) {
            row.createCell(c).setCellValue(n.doubleValue());
        } else if (value instanceof Boolean b) {
            row.createCell(c).setCellValue(b);
        } else if (value instanceof String s && s.startsWith("=")) {
            row.createCell(c).setCellFormula(s.substring(1));
        } else if (value != null) {
            row.createCell(c).setCellValue(value.toString());
        }
    }

    @Test
    void readsAsTheSameTableWouldAsText() throws IOException {
        CycleChart chart = chart(
                new Object[] {"step", "name", "0P1", "Y1", "MP3 bar"},
                new Object[] {1, "Power off", 0, "", null},
                new Object[] {},
                new Object[] {2, "Raise", 1, "X", 120.5},
                new Object[] {3, "Lower", true, "=1-1", null});
        assertThat(chart.solenoids()).containsExactly("0P1", "Y1");
        assertThat(chart.steps())
                .extracting(CycleChart.Step::number, CycleChart.Step::energised)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("1", java.util.Set.of()),
                        org.assertj.core.groups.Tuple.tuple("2", java.util.Set.of("0P1", "Y1")),
                        org.assertj.core.groups.Tuple.tuple("3", java.util.Set.of("0P1")));
        assertThat(chart.steps().get(1).said().pressuresBar()).containsEntry("MP3", 120.5);
    }

    @Test
    void aBadCellIsNamedByItsRowAndColumn() {
        assertThatThrownBy(() -> chart(new Object[] {"step", "Y1"}, new Object[] {1, 1}, new Object[] {2, "maybe"}))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("cycle.xlsx, line 3, column 2 (Y1): 'maybe' is neither on");
    }

    @Test
    void aCellUnderNoHeadingIsNamed() {
        assertThatThrownBy(() -> chart(new Object[] {"step", "Y1"}, new Object[] {1, 1, "X"}))
                .hasMessageContaining("line 2, column 3: 'X' stands in a column without a heading");
    }

    @Test
    void whatIsNoSpreadsheetIsTold() throws IOException {
        Files.writeString(folder.resolve("cycle.xlsx"), "step,Y1");
        assertThatThrownBy(() -> SetFolder.at(folder).chart())
                .isInstanceOf(UserError.class)
                .hasMessageContaining("cycle.xlsx is no readable .xlsx spreadsheet");
    }

    @Test
    void twoChartsInOneSetAreOneTooMany() throws IOException {
        chart(new Object[] {"step", "Y1"}, new Object[] {1, 1});
        Files.writeString(folder.resolve("cycle.csv"), "step,Y1\n");
        assertThatThrownBy(() -> SetFolder.at(folder).chart()).hasMessageContaining("keep the one that counts");
    }
}
