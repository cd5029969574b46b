package linewalk.samples.sheet;

import java.util.List;
import linewalk.samples.symbol.Ink;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.Pen;

/** Ruled tables; the first row is the heading. */
final class TablePainter {
    private TablePainter() {}

    static void paint(
            Ink ink,
            double x,
            double y,
            List<Double> widths,
            double rowHeight,
            double textHeight,
            List<List<String>> rows) {
        double total = widths.stream().mapToDouble(Double::doubleValue).sum();
        for (int i = 0; i <= rows.size(); i++) {
            ink.line(i < 2 ? Pen.OUTLINE : Pen.THIN, x, y + i * rowHeight, x + total, y + i * rowHeight);
        }
        double left = x;
        ink.line(Pen.OUTLINE, left, y, left, y + rows.size() * rowHeight);
        for (int column = 0; column < widths.size(); column++) {
            for (int row = 0; row < rows.size(); row++) {
                Lettering plain = Lettering.left(textHeight);
                ink.text(
                        row == 0 ? plain.inBold() : plain,
                        left + textHeight * 0.6,
                        y + (row + 0.5) * rowHeight,
                        rows.get(row).get(column));
            }
            left += widths.get(column);
            ink.line(Pen.OUTLINE, left, y, left, y + rows.size() * rowHeight);
        }
    }
}
