package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.renderer.symbol.Side;

/**
 * Sets the stops of a walk in columns like those of a newspaper: down a column, then the next column to the right, then
 * the next page. Stops that follow one another stand port under port.
 */
final class ColumnPacking {

    /** Room above and below a column, for lines to the next one and for match marks. */
    static final double RIM_PT = 36;
    /** Room for lines between columns. */
    private static final double LANE_PT = 33;

    private static final double MOST_LANE_PT = 90;
    /** Room left of the first column. */
    private static final double LEFT_PT = 18;

    private static final double GAP_PT = 28;
    private static final double MOST_GAP_PT = 46;
    /** Room for a line that runs along a column's gap. */
    private static final double LEVEL_LINE_PT = 15;

    /** @param page counts from 0 */
    record Placed(int page, Rectangle2D box) {}

    /** A column: its figures' left edges from the first one's port, its height without spreading. */
    private static final class Column {
        final List<StopFigure> figures = new ArrayList<>();
        final List<Double> xs = new ArrayList<>();
        final List<Double> gaps = new ArrayList<>();
        double heightPt;
        double leftPt;
        double rightPt;

        double widthPt() {
            return rightPt - leftPt;
        }
    }

    final Map<StopFigure, Placed> places = new LinkedHashMap<>();
    private final List<StopFigure> figures;
    private final List<FlowGraph.Edge> edges;
    private final PrintAreas areas;

    ColumnPacking(List<StopFigure> figures, List<FlowGraph.Edge> edges, PrintAreas areas) {
        this.figures = figures;
        this.edges = edges;
        this.areas = areas;
        double most = areas.whole().getHeight() - 2 * RIM_PT;
        int least = columns(most).size();
        double height = most;
        while (height > most / 3 && columns(height - 6).size() == least) {
            height -= 6;
        }
        setOut(columns(height), most);
    }

    /** The edge that runs straight down from one figure to the next, or null. */
    FlowGraph.Edge chain(StopFigure upper, StopFigure lower) {
        return edges.stream()
                .filter(e -> e.from() == upper.stop && e.to() == lower.stop)
                .filter(e -> upper.side(e.fromKey()) == Side.BOTTOM && lower.side(e.toKey()) == Side.TOP)
                .findFirst()
                .orElse(null);
    }

    private List<Column> columns(double heightPt) {
        List<Column> columns = new ArrayList<>();
        Column column = null;
        for (StopFigure f : figures) {
            double gap = column == null ? 0 : gap(last(column), f);
            if (column == null || column.heightPt + gap + f.heightPt() > heightPt) {
                column = new Column();
                columns.add(column);
                gap = 0;
            }
            add(column, f, gap);
        }
        return columns;
    }

    private static StopFigure last(Column column) {
        return column.figures.get(column.figures.size() - 1);
    }

    private double gap(StopFigure upper, StopFigure lower) {
        int chained = chain(upper, lower) == null ? 0 : 1;
        long below = ports(upper, Side.BOTTOM) - chained;
        long above = ports(lower, Side.TOP) - chained;
        return GAP_PT + LEVEL_LINE_PT * (below + above);
    }

    private static long ports(StopFigure f, Side side) {
        return f.stop.uses.stream().filter(u -> f.side(u.key()) == side).count();
    }

    private void add(Column column, StopFigure f, double gap) {
        double x = -f.axisPt();
        if (!column.figures.isEmpty()) {
            int i = column.figures.size() - 1;
            StopFigure upper = column.figures.get(i);
            FlowGraph.Edge e = chain(upper, f);
            x = e == null
                    ? column.xs.get(i) + upper.axisPt() - f.axisPt()
                    : column.xs.get(i) + upper.offsetPt(e.fromKey()) - f.offsetPt(e.toKey());
        }
        column.figures.add(f);
        column.xs.add(x);
        column.gaps.add(gap);
        column.heightPt += gap + f.heightPt();
        column.leftPt = Math.min(column.leftPt, x);
        column.rightPt = Math.max(column.rightPt, x + f.widthPt());
    }

    private void setOut(List<Column> columns, double mostHeight) {
        int page = 0;
        int i = 0;
        while (i < columns.size()) {
            double room = areas.on(page).getWidth();
            int n = i + 1;
            double width = LEFT_PT + columns.get(i).widthPt();
            while (n < columns.size() && width + LANE_PT + columns.get(n).widthPt() <= room) {
                width += LANE_PT + columns.get(n).widthPt();
                n++;
            }
            double more = Math.min(MOST_LANE_PT - LANE_PT, Math.max(0, room - width) / (n - i));
            double x = areas.on(page).getX() + LEFT_PT + more / 2;
            for (Column c : columns.subList(i, n)) {
                setOut(c, page, x - c.leftPt, mostHeight);
                x += c.widthPt() + LANE_PT + more;
            }
            i = n;
            page++;
        }
    }

    private void setOut(Column column, int page, double x, double mostHeight) {
        int gaps = column.figures.size() - 1;
        double more = gaps == 0 ? 0 : Math.min(MOST_GAP_PT - GAP_PT, (mostHeight - column.heightPt) / gaps);
        double y = areas.on(page).getY() + RIM_PT;
        for (int i = 0; i < column.figures.size(); i++) {
            StopFigure f = column.figures.get(i);
            y += i == 0 ? 0 : column.gaps.get(i) + more;
            places.put(f, new Placed(page, new Rectangle2D.Double(x + column.xs.get(i), y, f.widthPt(), f.heightPt())));
            y += f.heightPt();
        }
    }
}
