package linewalk.renderer.symbol;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.renderer.symbol.Symbol.Use;

/**
 * Where the main ports of a directional valve lie about a square: on the sides and in the order of the drawing, so that
 * the squares look as they do there, turned over where the path would else enter from below. Ports that the drawing does
 * not place go by their letters, ports without letters by the path.
 */
final class SpoolPorts {

    /** Ports nearer than this share of the outline's length, across, stand one above the other. */
    private static final double SAME_COLUMN = 0.04;

    private final Component valve;
    private final List<Use> uses;
    private final Map<String, Side> sides = new LinkedHashMap<>();
    private final Map<String, Double> shares = new HashMap<>();

    SpoolPorts(Component valve, List<Use> uses) {
        this.valve = valve;
        this.uses = uses;
        if (!asDrawn()) {
            byLetter();
        }
        boolean turned =
                !uses.isEmpty() && sides.get(uses.get(0).key()) == (uses.get(0).in() ? Side.BOTTOM : Side.TOP);
        if (turned) {
            sides.replaceAll((k, s) -> s == Side.TOP ? Side.BOTTOM : Side.TOP);
        }
    }

    boolean has(String key) {
        return sides.containsKey(key);
    }

    Iterable<String> keys() {
        return sides.keySet();
    }

    Side side(String key) {
        return sides.get(key);
    }

    /** Across the square, 0 to 1. */
    double share(String key) {
        return shares.get(key);
    }

    private boolean isMain(Port port) {
        for (Position p : valve.positions()) {
            for (Passage x : p.passages()) {
                if (x.from().equals(port.id()) || x.to().equals(port.id())) {
                    return true;
                }
            }
        }
        return uses.stream().anyMatch(u -> u.key().equals(port.id())) || isMain(port.name());
    }

    private static boolean isMain(String name) {
        return !letter(name).isEmpty() && "PTRAB".contains(letter(name));
    }

    private static String letter(String name) {
        return name == null ? "" : name.toUpperCase(Locale.ROOT);
    }

    private boolean asDrawn() {
        List<Port> ports = valve.ports().stream().filter(this::isMain).toList();
        if (ports.isEmpty() || !uses.stream().allMatch(u -> ports.stream().anyMatch(p -> p.id().equals(u.key())))) {
            return false;
        }
        Box box = valve.box();
        double offX = 0;
        double offY = 0;
        for (Port p : ports) {
            offX += Math.min(
                    Math.abs(p.place().xPt() - box.x0Pt()), Math.abs(p.place().xPt() - box.x1Pt()));
            offY += Math.min(
                    Math.abs(p.place().yPt() - box.y0Pt()), Math.abs(p.place().yPt() - box.y1Pt()));
        }
        boolean upright = offY <= offX;
        Map<String, Double> across = new HashMap<>();
        for (Port p : ports) {
            double dx = p.place().xPt() - box.center().xPt();
            double dy = p.place().yPt() - box.center().yPt();
            sides.put(p.id(), (upright ? dy : dx) < 0 ? Side.TOP : Side.BOTTOM);
            across.put(p.id(), upright ? dx : -dy);
        }
        return columns(across, SAME_COLUMN * Math.max(box.widthPt(), box.heightPt()));
    }

    /** False where two ports would lie on one place. */
    private boolean columns(Map<String, Double> across, double samePt) {
        List<Double> columns = new ArrayList<>();
        for (double at : across.values().stream().sorted().toList()) {
            if (columns.isEmpty() || at - columns.get(columns.size() - 1) > samePt) {
                columns.add(at);
            }
        }
        across.forEach((id, at) -> {
            int column = 0;
            while (column + 1 < columns.size() && columns.get(column + 1) <= at) {
                column++;
            }
            shares.put(id, share(column, columns.size()));
        });
        long places = sides.keySet().stream()
                .map(id -> sides.get(id) + " " + shares.get(id))
                .distinct()
                .count();
        return places == sides.size();
    }

    private static double share(int column, int columns) {
        return columns == 2 ? 0.28 + 0.44 * column : (column + 1.0) / (columns + 1);
    }

    private void byLetter() {
        sides.clear();
        shares.clear();
        for (Port p : valve.ports()) {
            if (isMain(p.name())) {
                put(p.id(), p.name(), true);
            }
        }
        uses.forEach(u -> put(u.key(), u.name(), u.in()));
        for (Side side : Side.values()) {
            List<String> loose = sides.keySet().stream()
                    .filter(k -> sides.get(k) == side && !shares.containsKey(k))
                    .toList();
            loose.forEach(k -> shares.put(k, (loose.indexOf(k) + 1.0) / (loose.size() + 1)));
        }
    }

    private void put(String key, String name, boolean in) {
        switch (letter(name)) {
            case "P", "A" -> shares.put(key, 0.28);
            case "T", "R", "B" -> shares.put(key, 0.72);
            default -> shares.remove(key);
        }
        Side loose = in ? Side.TOP : Side.BOTTOM;
        sides.put(
                key,
                switch (letter(name)) {
                    case "P", "T", "R", "X", "Y", "L" -> Side.TOP;
                    case "A", "B" -> Side.BOTTOM;
                    default -> loose;
                });
    }
}
