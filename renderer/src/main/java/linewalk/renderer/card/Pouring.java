package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import linewalk.renderer.sheet.Column;
import linewalk.renderer.sheet.Row;

/** Pours blocks into columns; a table that goes on in the next column has its heading and head there again. */
final class Pouring {

    private final IntToDoubleFunction heightPt;
    private final List<Column> columns = new ArrayList<>();
    private List<Row> column = new ArrayList<>();
    private double used;

    private Pouring(IntToDoubleFunction heightPt) {
        this.heightPt = heightPt;
    }

    /** @param heightPt of each column by its number, from 0 */
    static List<Column> pour(List<Block> blocks, IntToDoubleFunction heightPt) {
        Pouring pouring = new Pouring(heightPt);
        blocks.forEach(pouring::add);
        pouring.next();
        return pouring.columns;
    }

    private void add(Block block) {
        List<Row> start = block.start();
        List<Row> first = new ArrayList<>(start);
        first.addAll(block.together() ? block.rows() : block.rows().subList(0, 1));
        if (!fits(height(first))) {
            next();
        }
        take(start);
        for (Row row : block.rows()) {
            if (!fits(row.heightPt())) {
                next();
                take(block.again());
            }
            take(List.of(row));
        }
        block.spare().stream().filter(r -> fits(r.heightPt())).forEach(r -> take(List.of(r)));
    }

    private boolean fits(double need) {
        return column.isEmpty() || used + need <= heightPt.applyAsDouble(columns.size());
    }

    private void take(List<Row> rows) {
        column.addAll(rows);
        used += height(rows);
    }

    private static double height(List<Row> rows) {
        return rows.stream().mapToDouble(Row::heightPt).sum();
    }

    private void next() {
        if (!column.isEmpty()) {
            columns.add(new Column(column));
            column = new ArrayList<>();
            used = 0;
        }
    }
}
