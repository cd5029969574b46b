package linewalk.renderer.symbol;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/**
 * A directional valve as a row of squares, drawn shifted: the lines meet the square that is active on this path. P and
 * T stand on top, A and B below; ports without letters lie where the path enters and leaves.
 */
final class SpoolSymbol implements Symbol {

    private static final double SQUARE_PT = 44;
    private static final double TOP_PT = 18;
    private static final double BELOW_PT = 8;

    private final Component valve;
    private final List<Use> uses;
    private final List<Position> squares;
    private final int active;

    SpoolSymbol(Component valve, List<Use> uses, Position active) {
        this.valve = valve;
        this.uses = List.copyOf(uses);
        squares = inOrder(valve.positions());
        int at = squares.indexOf(active);
        this.active = at < 0 ? Math.max(0, restOf(squares)) : at;
    }

    /** The first shifted position, the position at rest, then the others. */
    private static List<Position> inOrder(List<Position> positions) {
        List<Position> shifted = new ArrayList<>(positions);
        shifted.removeIf(Position::isRest);
        List<Position> row = new ArrayList<>();
        positions.stream().filter(Position::isRest).forEach(row::add);
        if (!shifted.isEmpty()) {
            row.add(0, shifted.get(0));
            row.addAll(shifted.subList(1, shifted.size()));
        }
        return row;
    }

    private static int restOf(List<Position> row) {
        for (int i = 0; i < row.size(); i++) {
            if (row.get(i).isRest()) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public double widthPt() {
        return Math.max(1, squares.size()) * SQUARE_PT + 8;
    }

    @Override
    public double heightPt() {
        return TOP_PT + SQUARE_PT + BELOW_PT + 12;
    }

    @Override
    public Side side(String key) {
        Use use = find(key);
        return sideOf(use.name(), use.in());
    }

    private static Side sideOf(String name, boolean in) {
        switch (letter(name)) {
            case "P", "T", "R", "X", "Y", "L":
                return Side.TOP;
            case "A", "B":
                return Side.BOTTOM;
            default:
                return in ? Side.TOP : Side.BOTTOM;
        }
    }

    private static String letter(String name) {
        return name == null ? "" : name.toUpperCase(Locale.ROOT);
    }

    private Use find(String key) {
        return uses.stream().filter(u -> u.key().equals(key)).findFirst().orElseThrow();
    }

    @Override
    public double offsetPt(String key) {
        return 4 + active * SQUARE_PT + slotPt(key);
    }

    private double slotPt(String key) {
        return slotOf(key, find(key).name());
    }

    private double slotOf(String key, String name) {
        switch (letter(name)) {
            case "P", "A":
                return SQUARE_PT * 0.28;
            case "T", "R", "B":
                return SQUARE_PT * 0.72;
            default:
                List<Use> same =
                        uses.stream().filter(u -> side(u.key()) == side(key)).toList();
                int i = same.indexOf(find(key));
                return SQUARE_PT * (i + 1) / (same.size() + 1);
        }
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double top = yPt + TOP_PT;
        for (int i = 0; i < Math.max(1, squares.size()); i++) {
            double x = xPt + 4 + i * SQUARE_PT;
            c.pen(Ink.BLACK, Ink.line(i == active ? 2 : 1.1));
            c.rect(x, top, SQUARE_PT, SQUARE_PT);
            if (i < squares.size()) {
                passages(c, squares.get(i), x, top, i == active);
                if (i != active) {
                    caption(c, squares.get(i), x, top);
                }
            }
        }
        if (squares.isEmpty()) {
            c.pen(Ink.BLACK, Ink.line(1));
            c.textAround("?", xPt + 4 + SQUARE_PT / 2, top + SQUARE_PT / 2, 16);
        }
        for (Use u : uses) {
            stub(c, u, xPt, yPt);
        }
    }

    private void caption(Canvas c, Position p, double x, double top) {
        if (squares.size() > 1) {
            String by = String.join("/", p.by());
            double room = SQUARE_PT - 2;
            while (by.length() > 1 && Lettering.widthPt(by, Lettering.TEXT_PT) > room) {
                by = by.substring(0, by.length() - 1);
            }
            c.pen(Ink.BLACK, Ink.line(1));
            c.textAround(by, x + SQUARE_PT / 2, top + SQUARE_PT + BELOW_PT + 8, Lettering.TEXT_PT);
        }
    }

    private void stub(Canvas c, Use u, double xPt, double yPt) {
        double x = xPt + offsetPt(u.key());
        boolean onTop = side(u.key()) == Side.TOP;
        double edge = onTop ? yPt + TOP_PT : yPt + TOP_PT + SQUARE_PT;
        double end = onTop ? yPt : yPt + heightPt();
        c.pen(Ink.PATH, Ink.line(2.6));
        c.line(x, edge, x, end);
        c.pen(Ink.BLACK, Ink.line(1));
        if (u.name() != null) {
            boolean left = x < xPt + 4 + active * SQUARE_PT + SQUARE_PT / 2;
            double w = Lettering.widthPt(u.name(), Lettering.TEXT_PT);
            c.text(u.name(), left ? x - w - 3 : x + 3, onTop ? edge - 4 : edge + 12, Lettering.TEXT_PT);
        }
    }

    /** Arrows from port to port inside one square; ports that nothing joins are not drawn. */
    private void passages(Canvas c, Position p, double x, double top, boolean isActive) {
        c.pen(Ink.BLACK, Ink.line(isActive ? 1.6 : 0.9));
        for (Passage passage : p.passages()) {
            double[] from = place(passage.from());
            double[] to = place(passage.to());
            if (from == null || to == null) {
                continue;
            }
            if (from[1] == to[1]) {
                double inner = from[1] == 0 ? 14 : SQUARE_PT - 14;
                c.lines(
                        x + from[0],
                        top + from[1],
                        x + from[0],
                        top + inner,
                        x + to[0],
                        top + inner,
                        x + to[0],
                        top + to[1]);
            } else {
                c.line(x + from[0], top + from[1], x + to[0], top + to[1]);
            }
            double before = from[1] == to[1] ? (from[1] == 0 ? -1 : 1) : to[1] - from[1];
            c.arrow(x + to[0], top + to[1], from[1] == to[1] ? 0 : to[0] - from[0], before, 8);
        }
    }

    /** Within a square: across and down; null for a port that has neither letter nor use. */
    private double[] place(String portId) {
        String name = valve.findPort(portId).map(Port::name).orElse(null);
        Use use = uses.stream().filter(u -> u.key().equals(portId)).findFirst().orElse(null);
        if (use == null && !"PTRAB".contains(letter(name).isEmpty() ? "-" : letter(name))) {
            return null;
        }
        Side side = sideOf(name, use != null && use.in());
        return new double[] {slotOf(portId, name), side == Side.TOP ? 0 : SQUARE_PT};
    }
}
