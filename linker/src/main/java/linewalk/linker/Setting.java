package linewalk.linker;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Two ways to write a setting: {@code 210 bar}, {@code 21 MPa} and {@code 3045 psi} are one. */
final class Setting {

    private static final Pattern VALUE =
            Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*([A-Za-z\"/%\u00b3\u00b0]*[A-Za-z\"%\u00b3]\\d?)?");

    /** What rounding to whole units of another system takes away. */
    private static final double ROUNDING = 0.015;

    private record Unit(String of, double size) {}

    /** Exact by definition: 1 psi = 6894.757 Pa, 1 US gallon = 3.785411784 litres, 1 hp = 745.7 W, 1 inch = 25.4 mm. */
    private static final Map<String, Unit> UNITS = Map.ofEntries(
            Map.entry("BAR", new Unit("pressure", 1)),
            Map.entry("MPA", new Unit("pressure", 10)),
            Map.entry("KPA", new Unit("pressure", 0.01)),
            Map.entry("PSI", new Unit("pressure", 0.06894757)),
            Map.entry("L/MIN", new Unit("flow", 1)),
            Map.entry("LPM", new Unit("flow", 1)),
            Map.entry("GPM", new Unit("flow", 3.785411784)),
            Map.entry("KW", new Unit("power", 1)),
            Map.entry("HP", new Unit("power", 0.7457)),
            Map.entry("MM", new Unit("length", 1)),
            Map.entry("IN", new Unit("length", 25.4)),
            Map.entry("\"", new Unit("length", 25.4)),
            Map.entry("L", new Unit("volume", 1)),
            Map.entry("GAL", new Unit("volume", 3.785411784)));

    private record Value(double number, Unit unit) {
        boolean comparable(Value o) {
            return unit == null || o.unit == null || unit.of.equals(o.unit.of);
        }

        boolean same(Value o) {
            boolean units = unit != null && o.unit != null;
            double a = units ? number * unit.size : number;
            double b = units ? o.number * o.unit.size : o.number;
            return Math.abs(a - b) <= (units && unit.size != o.unit.size ? ROUNDING : 1e-9) * Math.max(a, b);
        }
    }

    private Setting() {}

    /** False where either says nothing or they can't be compared. */
    static boolean differ(String a, String b) {
        List<Value> one = values(a);
        List<Value> other = values(b);
        if (one.isEmpty() || one.size() != other.size()) {
            return false;
        }
        boolean differ = false;
        for (int i = 0; i < one.size(); i++) {
            if (!one.get(i).comparable(other.get(i))) {
                return false;
            }
            differ |= !one.get(i).same(other.get(i));
        }
        return differ;
    }

    private static List<Value> values(String text) {
        List<Value> values = new ArrayList<>();
        Matcher m = VALUE.matcher(text == null ? "" : text);
        while (m.find()) {
            String unit = m.group(2) == null ? "" : m.group(2).toUpperCase(Locale.ROOT);
            Unit known = unit.isEmpty() ? null : UNITS.getOrDefault(unit, new Unit(unit, 1));
            values.add(new Value(Double.parseDouble(m.group(1).replace(',', '.')), known));
        }
        return values;
    }
}
