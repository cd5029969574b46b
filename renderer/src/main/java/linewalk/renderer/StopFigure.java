package linewalk.renderer;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.linker.Leg;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;
import linewalk.renderer.symbol.CylinderEnds;
import linewalk.renderer.symbol.Side;
import linewalk.renderer.symbol.Symbol;

/** A stop of the drawn look: symbol or crossing mark on the left, its words on the right. */
final class StopFigure {

    private static final double WORDS_PT = 112;
    /** Beside a wide symbol. */
    private static final double FEW_WORDS_PT = 92;

    private static final double WIDE_PT = 80;
    private static final double GAP_PT = 6;
    private static final double CROSS_WIDTH_PT = 30;
    private static final double CROSS_HEIGHT_PT = 40;

    final FlowGraph.Stop stop;
    private final Symbol symbol;
    private final List<String> words = new ArrayList<>();
    private final List<Doubts.Doubt> doubts = new ArrayList<>();
    private final String balloon;
    private double wordsWidthPt;

    StopFigure(FlowGraph.Stop stop, PrintJob job, Doubts all) {
        this.stop = stop;
        Words names = new Words(job);
        stop.legs.forEach(i -> doubts.addAll(all.at(i)));
        if (stop.isOpenEnd()) {
            symbol = null;
            balloon = null;
            words.add(stop.firstLeg == 0 ? "the walk starts here" : "the walk stops here");
        } else if (stop.crossing == null) {
            symbol = Symbol.of(stop.part, stop.uses, stop.active, stop.against);
            balloon = names.balloon(stop.part);
            partWords(names);
        } else {
            symbol = null;
            balloon = null;
            crossingWords(names, job);
        }
        double firstIndent = balloon == null ? 0 : 26;
        for (int i = 0; i < words.size(); i++) {
            double size = i == 0 && balloon != null ? Lettering.HEAD_PT : Lettering.TEXT_PT;
            wordsWidthPt = Math.max(wordsWidthPt, Lettering.widthPt(words.get(i), size) + (i == 0 ? firstIndent : 0));
        }
    }

    private void partWords(Words names) {
        words.add(stop.part.tag());
        wrap(names.description(stop.part));
        String setting = names.setting(stop.part);
        if (!setting.isEmpty()) {
            wrap(setting);
        }
        if (stop.part.kind() == Kind.CYLINDER
                && stop.uses.stream().anyMatch(u -> CylinderEnds.of(stop.part, u.key()) == CylinderEnds.UNTOLD)) {
            wrap("rod side not read");
        }
        if (stop.isWayUnread()) {
            wrap("way through not read");
        }
        if (stop.shift != null) {
            wrap("SHIFT: " + String.join(" or ", stop.shift.by()));
        } else if (stop.active != null && !stop.active.isRest()) {
            wrap("on: " + String.join(" or ", stop.active.by()));
        }
        wrap(names.address(stop.part));
    }

    private void wrap(String text) {
        words.addAll(Lettering.wrap(text, Lettering.TEXT_PT, symbol.widthPt() > WIDE_PT ? FEW_WORDS_PT : WORDS_PT));
    }

    private void crossingWords(Words names, PrintJob job) {
        Leg.Across x = stop.crossing;
        words.add("from " + names.address(x.from())
                + label(job, stop.firstLeg - 1, x.from().label()));
        words.add("to " + names.address(x.to()) + label(job, stop.firstLeg + 1, x.to().label()));
    }

    private static String label(PrintJob job, int leg, String printed) {
        String label = printed;
        List<Leg> legs = job.trace().legs();
        if (leg >= 0
                && leg < legs.size()
                && legs.get(leg) instanceof Leg.Along a
                && a.line().label() != null) {
            label = a.line().label();
        }
        return label == null ? "" : " (" + label + ")";
    }

    private double symbolWidthPt() {
        return symbol == null ? CROSS_WIDTH_PT : symbol.widthPt();
    }

    private double symbolHeightPt() {
        return symbol == null ? CROSS_HEIGHT_PT : symbol.heightPt();
    }

    private double wordsHeightPt() {
        return words.size() * Lettering.LEADING_PT + 4 + (doubts.isEmpty() ? 0 : 28);
    }

    double widthPt() {
        return symbolWidthPt() + GAP_PT + Math.max(wordsWidthPt, doubts.size() * 38) + 2;
    }

    double heightPt() {
        return Math.max(symbolHeightPt(), wordsHeightPt());
    }

    Side side(String key) {
        return symbol == null ? (key.equals(FlowGraph.IN) ? Side.TOP : Side.BOTTOM) : symbol.side(key);
    }

    double offsetPt(String key) {
        return symbol == null ? CROSS_WIDTH_PT / 2 : symbol.offsetPt(key);
    }

    /** Where the path first meets the figure, from its left edge. */
    double axisPt() {
        return stop.uses.isEmpty()
                ? symbolWidthPt() / 2
                : offsetPt(stop.uses.get(0).key());
    }

    void paint(Canvas c, double xPt, double yPt) {
        double symbolY = yPt + (heightPt() - symbolHeightPt()) / 2;
        c.pen(Ink.PATH, Ink.line(2.6));
        for (Symbol.Use u : stop.uses) {
            double x = xPt + offsetPt(u.key());
            if (side(u.key()) == Side.TOP) {
                c.line(x, yPt, x, symbolY);
            } else {
                c.line(x, symbolY + symbolHeightPt(), x, yPt + heightPt());
            }
        }
        if (stop.isOpenEnd()) {
            c.pen(Ink.PATH, Ink.line(2.6));
            double x = xPt + CROSS_WIDTH_PT / 2;
            double bar = symbolY + CROSS_HEIGHT_PT / 2;
            c.line(x, stop.firstLeg == 0 ? symbolY + CROSS_HEIGHT_PT : symbolY, x, bar);
            c.line(x - 12, bar, x + 12, bar);
        } else if (symbol == null) {
            crossing(c, xPt, symbolY);
        } else {
            symbol.paint(c, xPt, symbolY);
        }
        words(c, xPt + symbolWidthPt() + GAP_PT, yPt + (heightPt() - wordsHeightPt()) / 2);
    }

    /** Two flags back to back: one sheet is left, the next is entered. */
    static void crossingMark(Canvas c, double xPt, double yPt, double widthPt, double heightPt) {
        double m = yPt + heightPt / 2;
        double w = widthPt - 4;
        c.pen(Ink.BLACK, Ink.line(1.3));
        c.polygon(
                java.awt.Color.WHITE,
                xPt + 2,
                yPt + 4,
                xPt + 2 + w,
                yPt + 4,
                xPt + 2 + w,
                m - 7,
                xPt + 2 + w / 2,
                m - 2,
                xPt + 2,
                m - 7);
        c.outline(xPt + 2, yPt + 4, xPt + 2 + w, yPt + 4, xPt + 2 + w, m - 7, xPt + 2 + w / 2, m - 2, xPt + 2, m - 7);
        double[] shape = {
            xPt + 2,
            m + 2,
            xPt + 2 + w / 2,
            m + 7,
            xPt + 2 + w,
            m + 2,
            xPt + 2 + w,
            yPt + heightPt - 4,
            xPt + 2,
            yPt + heightPt - 4
        };
        c.polygon(Ink.PALE, shape);
        c.outline(shape);
    }

    private void crossing(Canvas c, double xPt, double yPt) {
        double x = xPt + CROSS_WIDTH_PT / 2;
        c.pen(Ink.PATH, Ink.line(2.6));
        c.line(x, yPt, x, yPt + CROSS_HEIGHT_PT);
        crossingMark(c, xPt, yPt, CROSS_WIDTH_PT, CROSS_HEIGHT_PT);
    }

    private void words(Canvas c, double xPt, double yPt) {
        double y = yPt;
        for (int i = 0; i < words.size(); i++) {
            boolean head = i == 0 && balloon != null;
            c.pen(Ink.BLACK, Ink.line(1.2));
            if (head) {
                balloon(c, balloon, xPt + 11, y + 8);
            }
            c.text(words.get(i), head ? xPt + 26 : xPt, y + 12, head ? Lettering.HEAD_PT : Lettering.TEXT_PT);
            y += Lettering.LEADING_PT + (head ? 4 : 0);
        }
        for (int i = 0; i < doubts.size(); i++) {
            doubtMark(c, doubts.get(i).mark(), xPt + 18 + i * 38, y + 16);
        }
    }

    /** An item number in a ring, centred on a point; long numbers get a wider ring. */
    static void balloon(Canvas c, String number, double xPt, double yPt) {
        double r = Math.max(9.5, Lettering.widthPt(number, Lettering.TEXT_PT) / 2 + 3.5);
        java.awt.Shape ring = new java.awt.geom.RoundRectangle2D.Double(xPt - r, yPt - 9.5, 2 * r, 19, 19, 19);
        c.fill(java.awt.Color.WHITE, ring);
        c.pen(Ink.BLACK, Ink.line(1.2));
        c.draw(ring);
        c.textAround(number, xPt, yPt, Lettering.TEXT_PT);
    }

    /** A diamond that holds a doubt's number. */
    static void doubtMark(Canvas c, String mark, double xPt, double yPt) {
        double[] d = {xPt - 18, yPt, xPt, yPt - 12, xPt + 18, yPt, xPt, yPt + 12};
        c.polygon(java.awt.Color.WHITE, d);
        c.pen(Ink.DOUBT, Ink.line(1.8));
        c.outline(d);
        c.textAround(mark, xPt, yPt, Lettering.TEXT_PT);
    }
}
