package linewalk.renderer.symbol;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Position;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/**
 * A directional valve as a row of squares, drawn shifted: the lines meet the square that is active on this path. Ports
 * stand where the drawing has them.
 */
final class SpoolSymbol implements Symbol {

    private static final double SQUARE_PT = 40;
    /** Squares are drawn wider where the name of a solenoid needs it. */
    private static final double MOST_CELL_PT = 72;

    private static final double TOP_PT = 18;
    private static final double BELOW_PT = 8;

    private final List<Use> uses;
    private final List<Position> squares;
    private final int active;
    private final SpoolPorts ports;
    private final double cellPt;

    SpoolSymbol(Component valve, List<Use> uses, Position active) {
        this.uses = List.copyOf(uses);
        ports = new SpoolPorts(valve, uses);
        squares = inOrder(valve.positions());
        cellPt = squares.stream()
                .mapToDouble(p -> Lettering.widthPt(caption(p), Lettering.TEXT_PT) + 6)
                .map(w -> Math.min(MOST_CELL_PT, Math.max(SQUARE_PT, w)))
                .max()
                .orElse(SQUARE_PT);
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
        return Math.max(1, squares.size()) * cellPt + 8;
    }

    @Override
    public double heightPt() {
        int lines = squares.stream().mapToInt(p -> captionLines(p).size()).max().orElse(1);
        return TOP_PT + SQUARE_PT + BELOW_PT + 12 * lines;
    }

    @Override
    public Side side(String key) {
        return ports.side(key);
    }

    @Override
    public double offsetPt(String key) {
        return 4 + active * cellPt + ports.share(key) * cellPt;
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double top = yPt + TOP_PT;
        for (int i = 0; i < Math.max(1, squares.size()); i++) {
            double x = xPt + 4 + i * cellPt;
            c.pen(Ink.BLACK, Ink.line(i == active ? 2 : 1.1));
            c.rect(x, top, cellPt, SQUARE_PT);
            if (i < squares.size()) {
                passages(c, squares.get(i), x, top, i == active);
                if (i != active) {
                    caption(c, squares.get(i), x, top);
                }
            }
        }
        if (squares.isEmpty()) {
            c.pen(Ink.BLACK, Ink.line(1));
            c.textAround("?", xPt + 4 + cellPt / 2, top + SQUARE_PT / 2, 16);
        }
        for (Use u : uses) {
            stub(c, u, xPt, yPt);
        }
    }

    private static String caption(Position p) {
        return String.join("/", p.by());
    }

    private List<String> captionLines(Position p) {
        return Lettering.wrap(caption(p).replace("/", "/ "), Lettering.TEXT_PT, cellPt - 2);
    }

    private void caption(Canvas c, Position p, double x, double top) {
        if (squares.size() > 1) {
            double size = Lettering.TEXT_PT;
            List<String> lines = captionLines(p);
            c.pen(Ink.BLACK, Ink.line(1));
            for (int i = 0; i < lines.size(); i++) {
                c.textAround(lines.get(i), x + cellPt / 2, top + SQUARE_PT + BELOW_PT + 8 + i * size, size);
            }
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
            boolean left = x < xPt + 4 + (active + 0.5) * cellPt;
            double w = Lettering.widthPt(u.name(), Lettering.TEXT_PT);
            c.text(u.name(), left ? x - w - 3 : x + 3, onTop ? edge - 4 : edge + 12, Lettering.TEXT_PT);
        }
    }

    /** Arrows from port to port inside one square, bars where a port is shut. */
    private void passages(Canvas c, Position p, double x, double top, boolean isActive) {
        c.pen(Ink.BLACK, Ink.line(isActive ? 1.6 : 0.9));
        Set<String> open = new HashSet<>();
        for (Passage passage : p.passages()) {
            open.add(passage.from());
            open.add(passage.to());
            if (ports.has(passage.from()) && ports.has(passage.to())) {
                passage(c, place(passage.from()), place(passage.to()), x, top);
            }
        }
        for (String key : ports.keys()) {
            if (!open.contains(key)) {
                double px = x + place(key)[0];
                double inner = ports.side(key) == Side.TOP ? top + 9 : top + SQUARE_PT - 9;
                c.line(px, top + place(key)[1], px, inner);
                c.line(px - 5, inner, px + 5, inner);
            }
        }
    }

    private static void passage(Canvas c, double[] from, double[] to, double x, double top) {
        if (from[1] != to[1]) {
            c.line(x + from[0], top + from[1], x + to[0], top + to[1]);
            c.arrow(x + to[0], top + to[1], to[0] - from[0], to[1] - from[1], 8);
            return;
        }
        double inner = top + (from[1] == 0 ? 14 : SQUARE_PT - 14);
        double edge = top + from[1];
        c.lines(x + from[0], edge, x + from[0], inner, x + to[0], inner, x + to[0], edge);
        c.arrow(x + to[0], edge, 0, from[1] == 0 ? -1 : 1, 8);
    }

    /** Within a square: across and down. */
    private double[] place(String key) {
        return new double[] {ports.share(key) * cellPt, ports.side(key) == Side.TOP ? 0 : SQUARE_PT};
    }
}
