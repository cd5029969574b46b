package linewalk.renderer.overlay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import linewalk.drawing.Finding;
import linewalk.drawing.Sheet;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;
import linewalk.renderer.sheet.Row;

/** The text of numbered findings: number, what kind, where, the evidence and a likely remedy. */
final class FindingRows {

    private static final double INDENT = 26;

    private FindingRows() {}

    /** @param sheet on which they stand, or null for those about the whole set */
    static List<Row> of(List<Numbered> findings, Sheet sheet, double width) {
        List<Row> rows = new ArrayList<>();
        Map<String, Integer> remedies = new HashMap<>();
        for (Numbered n : findings) {
            rows.addAll(of(n, sheet, remedy(n, remedies), width));
        }
        return rows;
    }

    /** Many findings of one kind have one remedy: it is written once. */
    private static String remedy(Numbered n, Map<String, Integer> before) {
        String remedy = n.finding().remedy();
        if (remedy == null) {
            return null;
        }
        Integer first = before.putIfAbsent(remedy, n.number());
        return "Likely remedy: " + (first == null ? remedy : "as for " + first) + ".";
    }

    private static List<Row> of(Numbered n, Sheet sheet, String remedy, double width) {
        Finding f = n.finding();
        String zone = sheet == null ? null : Words.zone(sheet, f.place());
        String where = f.place() == null ? "" : zone == null ? "" : ", " + zone;
        List<String> lines = new ArrayList<>();
        lines.add(f.severity().name().toLowerCase(Locale.ROOT) + ", "
                + f.rule().word().replace('-', ' ') + where + (f.place() == null ? " (no one place)" : ""));
        lines.addAll(Lettering.wrap(f.message(), Lettering.TEXT_PT, width - INDENT));
        if (remedy != null) {
            lines.addAll(Lettering.wrap(remedy, Lettering.TEXT_PT, width - INDENT));
        }
        double height = lines.size() * Lettering.LEADING_PT + 6;
        return List.of(new Row(height, false, (c, x, y) -> {
            new Marks(c, new Scale(1.25)).number(n.number(), f.severity(), x + 10, y + 10);
            for (int i = 0; i < lines.size(); i++) {
                c.pen(i == 0 ? Ink.DOUBT : Ink.BLACK, Ink.line(1));
                c.text(lines.get(i), x + INDENT, y + Lettering.TEXT_PT + i * Lettering.LEADING_PT, Lettering.TEXT_PT);
            }
        }));
    }
}
