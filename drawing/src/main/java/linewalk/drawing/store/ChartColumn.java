package linewalk.drawing.store;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A column of the cycle chart. A word after the designation says what it holds ({@code 1A1 load}, {@code MP3 bar},
 * {@code 3V1 lever}, {@code 0V9 shut-off}, {@code 1A1 motion}); without one the cells tell: open or closed, extend or
 * retract, a pressure with its unit; all others are on or off.
 *
 * @param unit the pressure unit in the header, or null
 */
record ChartColumn(String header, String tag, Says says, String unit) {

    /** What a column's cells say. */
    enum Says {
        SWITCH,
        POSITION,
        OPEN,
        MOTION,
        LOAD,
        PRESSURE
    }

    private static final Map<String, Says> WORDS = Map.ofEntries(
            Map.entry("load", Says.LOAD),
            Map.entry("motion", Says.MOTION),
            Map.entry("position", Says.POSITION),
            Map.entry("lever", Says.POSITION),
            Map.entry("hand", Says.POSITION),
            Map.entry("cam", Says.POSITION),
            Map.entry("shut-off", Says.OPEN),
            Map.entry("pressure", Says.PRESSURE),
            Map.entry("bar", Says.PRESSURE),
            Map.entry("psi", Says.PRESSURE),
            Map.entry("mpa", Says.PRESSURE),
            Map.entry("running", Says.SWITCH));

    static ChartColumn of(Csv.Table table, String header) {
        int blank = header.lastIndexOf(' ');
        String last = header.substring(blank + 1).toLowerCase(Locale.ROOT).replaceAll("[()\\[\\]]", "");
        Says said = blank < 0 ? null : WORDS.get(last);
        if (said != null) {
            String unit = ChartCell.isUnit(last) ? last : null;
            return new ChartColumn(header, header.substring(0, blank).strip(), said, unit);
        }
        return new ChartColumn(header, header, byCells(table, header), null);
    }

    private static Says byCells(Csv.Table table, String header) {
        List<String> cells = table.rows().stream()
                .map(r -> r.get(header))
                .filter(c -> c != null)
                .toList();
        if (cells.stream().anyMatch(ChartCell::isOpenOrClosed)) {
            return Says.OPEN;
        } else if (cells.stream().anyMatch(ChartCell::isMotion)) {
            return Says.MOTION;
        } else if (cells.stream().anyMatch(ChartCell::hasUnit)) {
            return Says.PRESSURE;
        }
        return Says.SWITCH;
    }
}
