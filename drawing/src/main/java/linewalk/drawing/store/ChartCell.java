package linewalk.drawing.store;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linewalk.drawing.CycleChart;
import linewalk.drawing.UserError;

/** One filled cell of the cycle chart; what can't be read is told with its row and column. */
record ChartCell(Csv.Table table, Csv.Row row, String column, String text) {

    private static final Set<String> ON = Set.of("1", "x", "+", "on", "yes", "true");
    private static final Set<String> OFF = Set.of("0", "-", "off", "no", "false");
    private static final Set<String> OPEN = Set.of("open", "opened");
    private static final Set<String> CLOSED = Set.of("closed", "shut");
    private static final Map<String, CycleChart.Motion> MOTIONS = Map.of(
            "extend", CycleChart.Motion.EXTEND,
            "retract", CycleChart.Motion.RETRACT,
            "hold", CycleChart.Motion.HOLD,
            "end of stroke", CycleChart.Motion.END_OF_STROKE);
    private static final Map<String, CycleChart.Load> LOADS = Map.of(
            "extend", CycleChart.Load.EXTEND,
            "retract", CycleChart.Load.RETRACT,
            "none", CycleChart.Load.NONE);
    /** One psi is 6894.757 Pa (exact to the digits given). */
    private static final Map<String, Double> BAR = Map.of("bar", 1.0, "psi", 0.06894757, "mpa", 10.0);

    private static final Pattern PRESSURE = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(bar|psi|mpa)?");

    static boolean isUnit(String word) {
        return BAR.containsKey(word);
    }

    static boolean isOpenOrClosed(String cell) {
        return OPEN.contains(word(cell)) || CLOSED.contains(word(cell));
    }

    static boolean isMotion(String cell) {
        return MOTIONS.containsKey(word(cell));
    }

    static boolean hasUnit(String cell) {
        Matcher m = PRESSURE.matcher(word(cell));
        return m.matches() && m.group(2) != null;
    }

    private static String word(String cell) {
        return cell.strip().toLowerCase(Locale.ROOT);
    }

    private UserError wrong(String why) {
        return table.wrong(row, column, "'" + word(text) + "' " + why);
    }

    boolean on() {
        if (ON.contains(word(text))) {
            return true;
        } else if (OFF.contains(word(text))) {
            return false;
        }
        throw wrong("is neither on (1, X, +) nor off (0, -, empty)");
    }

    /** As written; whether the valve has such a position is for the drawings to say. */
    String position() {
        return OFF.contains(word(text)) ? "rest" : text.strip();
    }

    boolean open() {
        if (!isOpenOrClosed(text)) {
            throw wrong("is neither open nor closed");
        }
        return OPEN.contains(word(text));
    }

    CycleChart.Motion motion() {
        if (!isMotion(text)) {
            throw wrong("is none of extend, retract, hold, end of stroke");
        }
        return MOTIONS.get(word(text));
    }

    CycleChart.Load load() {
        if (!LOADS.containsKey(word(text))) {
            throw wrong("is none of extend, retract, none");
        }
        return LOADS.get(word(text));
    }

    /** @param headUnit the unit in the column's header, or null for bar */
    double pressureBar(String headUnit) {
        Matcher m = PRESSURE.matcher(word(text));
        if (!m.matches()) {
            throw wrong("is no pressure such as 120 or 120 bar");
        }
        String unit = m.group(2) != null ? m.group(2) : headUnit == null ? "bar" : headUnit;
        return Double.parseDouble(m.group(1).replace(',', '.')) * BAR.get(unit);
    }
}
