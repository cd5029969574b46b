package linewalk.renderer.report;

import linewalk.drawing.Finding;

/** For a terminal: by sheet and zone, each finding with its remedy; then what is kept, and the counts. */
public final class TextReport {

    private TextReport() {}

    public static String of(Report report) {
        StringBuilder text = new StringBuilder();
        report.bySheet().forEach((sheet, findings) -> {
            String title = sheet == null || sheet.title() == null ? "" : ": " + sheet.title();
            text.append(sheet == null ? "The set" : "Sheet " + sheet.name() + title)
                    .append('\n');
            for (Finding f : findings) {
                String zone = sheet == null
                        ? ""
                        : Report.zone(sheet, f).map(Object::toString).orElse("");
                text.append(String.format(
                        "  %-4s %s  %s  [%s]%n       %s%n",
                        zone, Report.word(f.severity()), f.rule().word(), f.id(), f.message()));
                if (f.remedy() != null) {
                    text.append("       likely remedy: ").append(f.remedy()).append('\n');
                }
            }
            text.append('\n');
        });
        if (!report.kept().isEmpty()) {
            text.append("Kept as they are\n");
            report.kept().forEach(f -> text.append("  ")
                    .append(report.where(f))
                    .append("  ")
                    .append(f.rule().word())
                    .append("  [")
                    .append(f.id())
                    .append("]: ")
                    .append(f.kept())
                    .append('\n'));
            text.append('\n');
        }
        return text.append(report.summary()).append('\n').toString();
    }
}
