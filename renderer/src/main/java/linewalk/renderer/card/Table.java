package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;
import linewalk.renderer.sheet.Row;

/** A ruled table with words, boxes to tick and fields to write in with a pen. */
final class Table {

    /** High enough to write in with a glove on. */
    static final double PEN_PT = 27;

    private static final double TICK_PT = 15;
    private static final double PAD_PT = 5;

    /** What the cells of a column hold. */
    enum Fill {
        WORDS,
        TICK,
        PEN
    }

    /** @param share of the width; the shares of a table add up to 1 */
    record Col(String title, double share, Fill fill) {}

    private final double widthPt;
    private final double leastPt;
    private final List<Col> cols;

    Table(double widthPt, double leastPt, Col... cols) {
        this.widthPt = widthPt;
        this.leastPt = leastPt;
        this.cols = List.of(cols);
    }

    Row head() {
        List<List<String>> titles = new ArrayList<>();
        for (Col col : cols) {
            titles.add(wrapped(col.title(), col));
        }
        double height = height(titles);
        return new Row(height, true, (c, x, y) -> {
            c.pen(Ink.GREY, Ink.line(1));
            words(c, titles, x, y);
            c.pen(Ink.BLACK, Ink.line(1.4));
            c.line(x, y, x + widthPt, y);
            c.line(x, y + height, x + widthPt, y + height);
            rules(c, x, y, height);
        });
    }

    /** @param texts of the columns that hold words, in order */
    Row row(String... texts) {
        List<List<String>> cells = new ArrayList<>();
        int next = 0;
        for (Col col : cols) {
            cells.add(col.fill() == Fill.WORDS ? wrapped(texts[next++], col) : List.of());
        }
        if (next != texts.length) {
            throw new IllegalArgumentException(Arrays.toString(texts) + " for " + next + " columns of words");
        }
        double height = Math.max(leastPt, height(cells));
        return new Row(height, false, (c, x, y) -> {
            c.pen(Ink.BLACK, Ink.line(0.6));
            words(c, cells, x, y);
            ticks(c, x, y, height);
            c.line(x, y + height, x + widthPt, y + height);
            rules(c, x, y, height);
        });
    }

    private List<String> wrapped(String text, Col col) {
        return text.isBlank() ? List.of() : Lettering.wrap(text, Lettering.TEXT_PT, col.share() * widthPt - 2 * PAD_PT);
    }

    private static double height(List<List<String>> cells) {
        int most = cells.stream().mapToInt(List::size).max().orElse(0);
        return most * Lettering.LEADING_PT + 6;
    }

    private void words(Canvas c, List<List<String>> cells, double xPt, double yPt) {
        double x = xPt;
        for (int i = 0; i < cols.size(); i++) {
            double baseline = yPt + Lettering.TEXT_PT + 3;
            for (String line : cells.get(i)) {
                c.text(line, x + PAD_PT, baseline, Lettering.TEXT_PT);
                baseline += Lettering.LEADING_PT;
            }
            x += cols.get(i).share() * widthPt;
        }
    }

    private void ticks(Canvas c, double xPt, double yPt, double heightPt) {
        double x = xPt;
        c.pen(Ink.BLACK, Ink.line(1.2));
        for (Col col : cols) {
            double w = col.share() * widthPt;
            if (col.fill() == Fill.TICK) {
                c.rect(x + (w - TICK_PT) / 2, yPt + (heightPt - TICK_PT) / 2, TICK_PT, TICK_PT);
            }
            x += w;
        }
        c.pen(Ink.BLACK, Ink.line(0.6));
    }

    /** Upright rules at the outer edges and between columns. */
    private void rules(Canvas c, double xPt, double yPt, double heightPt) {
        c.pen(Ink.BLACK, Ink.line(0.6));
        double x = xPt;
        c.line(x, yPt, x, yPt + heightPt);
        for (Col col : cols) {
            x += col.share() * widthPt;
            c.line(x, yPt, x, yPt + heightPt);
        }
    }
}
