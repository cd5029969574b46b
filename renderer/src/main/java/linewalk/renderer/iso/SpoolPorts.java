package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import linewalk.drawing.LineKind;
import linewalk.drawing.Port;

/**
 * Where ports lie about the square of a directional valve: P and T below, A and B above, others where their lines lead;
 * pilot and drain ports beside the row. Ports that are not shown but that the squares join keep their places.
 */
final class SpoolPorts {

    /** A place about a square: across from the square's left edge, above or below. */
    record Spot(double x, boolean above) {}

    static final double LEAST_CELL = 6;

    private final Drafting d;
    private final List<PortUse> beside = new ArrayList<>();
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final double cell;

    SpoolPorts(Drafting d) {
        this.d = d;
        List<PortUse> main = new ArrayList<>();
        for (PortUse u : d.uses()) {
            (isBeside(u) ? beside : main).add(u);
        }
        d.part().ports().stream().filter(this::isHidden).forEach(p -> main.add(hidden(p)));
        List<PortUse> above =
                main.stream().filter(SpoolPorts::isAbove).sorted(order()).toList();
        List<PortUse> below =
                main.stream().filter(u -> !isAbove(u)).sorted(order()).toList();
        List<PortUse> row = returnFirst(below);
        int columns = Math.max(above.size(), row.size());
        double least = columns == 2 ? 3 : 2;
        double pitch = Math.max(Shelf.pitch(above, least), Shelf.pitch(row, least));
        cell = Math.max(LEAST_CELL, 2 + pitch * (columns - 1));
        place(above, columns, pitch, true);
        place(row, columns, pitch, false);
    }

    private boolean isPassed(String id) {
        return d.passages().anyMatch(x -> x.from().equals(id) || x.to().equals(id));
    }

    private boolean isBeside(PortUse u) {
        boolean line = u.kind() == LineKind.PILOT || u.kind() == LineKind.DRAIN;
        return !isPassed(u.id()) && (Roles.isPilot(u.name()) || Roles.isDrain(u.name()) || line && !isMain(u.name()));
    }

    private static boolean isMain(String name) {
        return matches(name, "[PTRSABC]\\d?");
    }

    private static boolean matches(String name, String pattern) {
        return name != null && name.strip().matches("(?i)" + pattern);
    }

    private boolean isHidden(Port p) {
        return d.uses().stream().noneMatch(u -> u.id().equals(p.id())) && (isPassed(p.id()) || isMain(p.name()));
    }

    private PortUse hidden(Port p) {
        boolean up = p.place().yPt() < d.part().box().center().yPt();
        return new PortUse(p.id(), p.name(), LineKind.WORKING, up);
    }

    private static boolean isAbove(PortUse u) {
        return matches(u.name(), "[ABC]\\d?") || !matches(u.name(), "[PTRS]\\d?") && u.up();
    }

    /** By letters, ports without letters after them as they lie on the drawing. */
    private Comparator<PortUse> order() {
        return Comparator.comparingInt((PortUse u) -> isMain(u.name()) ? 0 : 1)
                .thenComparing(u -> isMain(u.name()) ? u.name().strip().toUpperCase(Locale.ROOT) : "")
                .thenComparingDouble(
                        u -> d.part().findPort(u.id()).map(p -> p.place().xPt()).orElse(0.0));
    }

    /** Of two returns one lies before the supply. */
    private static List<PortUse> returnFirst(List<PortUse> below) {
        List<PortUse> returns =
                below.stream().filter(u -> matches(u.name(), "[TRS]\\d?")).toList();
        List<PortUse> row = new ArrayList<>(below);
        if (returns.size() > 1) {
            row.remove(returns.get(0));
            row.add(0, returns.get(0));
        }
        return row;
    }

    /** In the columns of the fuller side; a single port of two columns stands in the first. */
    private void place(List<PortUse> ports, int columns, double pitch, boolean above) {
        boolean first = ports.size() == 1 && columns == 2;
        double start = (cell - pitch * ((first ? columns : ports.size()) - 1)) / 2;
        for (int i = 0; i < ports.size(); i++) {
            spots.put(ports.get(i).id(), new Spot(start + pitch * i, above));
        }
    }

    double cell() {
        return cell;
    }

    List<PortUse> beside() {
        return beside;
    }

    Map<String, Spot> spots() {
        return spots;
    }

    /** The ports shown that meet the row from above or below. */
    List<PortUse> shown() {
        return d.uses().stream().filter(u -> spots.containsKey(u.id())).toList();
    }
}
