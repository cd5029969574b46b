package linewalk.renderer.sheet;

import java.util.ArrayList;
import java.util.List;

/** Headings, paragraphs and tables as rows of a given width. */
public final class TextBlock {

    private static final double CELL_GAP_PT = 6;

    private final double widthPt;

    public TextBlock(double widthPt) {
        this.widthPt = widthPt;
    }

    public double widthPt() {
        return widthPt;
    }

    public List<Row> heading(String text) {
        Row.Painter painter = (c, x, y) -> {
            c.pen(Ink.BLACK, Ink.line(1.4));
            c.text(text, x, y + Lettering.HEAD_PT - 1, Lettering.HEAD_PT);
            c.line(x, y + Lettering.HEAD_PT + 3, x + widthPt, y + Lettering.HEAD_PT + 3);
        };
        return List.of(new Row(8, true, (c, x, y) -> {}), new Row(Lettering.HEAD_PT + 7, true, painter).heading(text));
    }

    /** A paragraph with a mark such as {@code 3.} hanging to its left. */
    public List<Row> paragraph(String mark, double indentPt, String text) {
        List<String> lines = Lettering.wrap(text, Lettering.TEXT_PT, widthPt - indentPt);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            String hanging = i == 0 ? mark : "";
            rows.add(new Row(Lettering.LEADING_PT, i < lines.size() - 1, (c, x, y) -> {
                c.pen(Ink.BLACK, Ink.line(1));
                c.text(hanging, x, y + Lettering.TEXT_PT, Lettering.TEXT_PT);
                c.text(line, x + indentPt, y + Lettering.TEXT_PT, Lettering.TEXT_PT);
            }));
        }
        rows.add(Row.gap(3));
        return rows;
    }

    /** A paragraph in a heavy frame, for what must not be overlooked. */
    public List<Row> framed(List<String> paragraphs) {
        List<String> lines = new ArrayList<>();
        for (String p : paragraphs) {
            lines.addAll(Lettering.wrap(p, Lettering.HEAD_PT, widthPt - 16));
        }
        double height = lines.size() * 16 + 10;
        return List.of(
                new Row(height, false, (c, x, y) -> {
                    c.pen(Ink.BLACK, Ink.line(2.2));
                    c.rect(x + 1.1, y + 1.1, widthPt - 2.2, height - 2.2);
                    for (int i = 0; i < lines.size(); i++) {
                        c.text(lines.get(i), x + 8, y + 16 + 16 * i, Lettering.HEAD_PT);
                    }
                }),
                Row.gap(6));
    }

    /** One row of a table; cells wrap in their columns. */
    public Row cells(List<Double> widthsPt, List<String> cells, boolean head) {
        List<List<String>> wrapped = new ArrayList<>();
        int most = 1;
        for (int i = 0; i < cells.size(); i++) {
            List<String> lines = Lettering.wrap(cells.get(i), Lettering.TEXT_PT, widthsPt.get(i) - CELL_GAP_PT);
            wrapped.add(lines);
            most = Math.max(most, lines.size());
        }
        double height = most * Lettering.LEADING_PT + 4;
        return new Row(height, head, (c, x, y) -> {
            c.pen(head ? Ink.GREY : Ink.BLACK, Ink.line(head ? 0.9 : 0.4));
            c.line(x, y + height - 1, x + widthPt, y + height - 1);
            paintCells(c, wrapped, widthsPt, x, y);
        });
    }

    private static void paintCells(Canvas c, List<List<String>> cells, List<Double> widthsPt, double xPt, double yPt) {
        double x = xPt;
        for (int i = 0; i < cells.size(); i++) {
            List<String> lines = cells.get(i);
            for (int k = 0; k < lines.size(); k++) {
                c.text(lines.get(k), x, yPt + Lettering.TEXT_PT + 1 + k * Lettering.LEADING_PT, Lettering.TEXT_PT);
            }
            x += widthsPt.get(i);
        }
    }
}
