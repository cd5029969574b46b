package linewalk.renderer.report;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.Finding;
import linewalk.drawing.Sheet;

/** For a spreadsheet (RFC 4180): a finding a row, those that are kept too, with the reason in the last column. */
public final class CsvReport {

    private static final String HEAD =
            "id,severity,rule,source,page,sheet,zone,xPt,yPt,references,components,message,remedy,kept";

    private CsvReport() {}

    public static String of(Report report) {
        return Stream.concat(Stream.of(HEAD), report.set().findings().stream().map(f -> row(report, f)))
                .collect(Collectors.joining("\r\n", "", "\r\n"));
    }

    private static String row(Report report, Finding f) {
        Sheet sheet = f.page() == null ? null : report.set().getSheet(f.page());
        return Stream.of(
                        f.id(),
                        Report.word(f.severity()),
                        f.rule().word(),
                        f.page() == null ? null : f.page().source(),
                        f.page() == null ? null : f.page().page(),
                        sheet == null ? null : sheet.name(),
                        sheet == null ? null : Report.zone(sheet, f).orElse(null),
                        f.place() == null ? null : Math.round(f.place().xPt()),
                        f.place() == null ? null : Math.round(f.place().yPt()),
                        joined(f.references()),
                        joined(f.components()),
                        f.message(),
                        f.remedy(),
                        f.kept())
                .map(CsvReport::cell)
                .collect(Collectors.joining(","));
    }

    private static String joined(List<String> words) {
        return String.join(" ", words);
    }

    /** Texts of a drawing that a spreadsheet would take for a formula get a mark before them. */
    private static String cell(Object value) {
        String text = Objects.toString(value, "");
        boolean formula = !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0 && !(value instanceof Number);
        String safe = formula ? "'" + text : text;
        return safe.matches("[^\",\r\n]*") ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }
}
