package linewalk.renderer;

import java.awt.geom.Point2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.renderer.ink.LineStyle;
import linewalk.renderer.iso.Duty;
import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.iso.Side;
import linewalk.renderer.iso.Symbol;
import linewalk.renderer.scheme.Figure;
import linewalk.renderer.sheet.Canvas;

/** A part: its symbol on the left, its words on the right, the lines of its ports drawn on to the field's edges. */
final class PartFigure implements Figure {

    private static final double GAP_PT = 5;

    private final Symbol symbol;
    private final TextStack words;
    private final Map<String, LineStyle> lines;
    private final double wordsTopPt;
    private final double heightPt;

    /** @param lines style of the line at each port that has one, in the order in which they are drawn */
    PartFigure(Symbol symbol, TextStack words, Map<String, LineStyle> lines) {
        this.symbol = symbol;
        this.words = words;
        this.lines = new LinkedHashMap<>(lines);
        double below = lines.keySet().stream()
                .map(symbol::place)
                .filter(p -> p.side() == Side.RIGHT)
                .mapToDouble(p -> p.offsetPt() + GAP_PT)
                .max()
                .orElse(0);
        heightPt = Math.max(symbol.heightPt(), below + words.heightPt());
        wordsTopPt = below > 0 ? below : (heightPt - words.heightPt()) / 2;
    }

    private double symbolTopPt() {
        return wordsTopPt > 0 && hasRight() ? 0 : (heightPt - symbol.heightPt()) / 2;
    }

    private boolean hasRight() {
        return lines.keySet().stream().anyMatch(k -> symbol.place(k).side() == Side.RIGHT);
    }

    Duty duty(String port) {
        return symbol.duty(port);
    }

    boolean asks() {
        return symbol.asks();
    }

    @Override
    public double widthPt() {
        return symbol.widthPt() + GAP_PT + words.widthPt() + 2;
    }

    @Override
    public double heightPt() {
        return heightPt;
    }

    @Override
    public PortPlace place(String port) {
        PortPlace p = symbol.place(port);
        boolean level = p.side() == Side.LEFT || p.side() == Side.RIGHT;
        return level ? new PortPlace(p.side(), p.offsetPt() + symbolTopPt()) : p;
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double top = yPt + symbolTopPt();
        lines.forEach((port, style) -> {
            PortPlace p = symbol.place(port);
            double x = xPt + p.offsetPt();
            double y = top + p.offsetPt();
            switch (p.side()) {
                case TOP -> line(c, style, x, yPt, x, top);
                case BOTTOM -> line(c, style, x, top + symbol.heightPt(), x, yPt + heightPt);
                case RIGHT -> line(c, style, xPt + symbol.widthPt(), y, xPt + widthPt(), y);
                case LEFT -> {}
            }
        });
        symbol.paint(c, xPt, top);
        words.paint(c, xPt + symbol.widthPt() + GAP_PT, yPt + wordsTopPt);
    }

    private static void line(Canvas c, LineStyle style, double x0, double y0, double x1, double y1) {
        if (Math.abs(x1 - x0) + Math.abs(y1 - y0) > 0.01) {
            style.paint(c, List.of(new Point2D.Double(x0, y0), new Point2D.Double(x1, y1)));
        }
    }
}
