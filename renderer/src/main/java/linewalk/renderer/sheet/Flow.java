package linewalk.renderer.sheet;

import java.util.ArrayList;
import java.util.List;

/** Pours rows into columns of one height. */
public final class Flow {

    private Flow() {}

    public static List<Column> pour(List<Row> rows, double heightPt) {
        List<Column> columns = new ArrayList<>();
        List<Row> column = new ArrayList<>();
        double used = 0;
        int i = 0;
        while (i < rows.size()) {
            int n = groupEnd(rows, i);
            double need = rows.subList(i, n).stream().mapToDouble(Row::heightPt).sum();
            if (used + need > heightPt && !column.isEmpty()) {
                columns.add(new Column(column));
                column = new ArrayList<>();
                used = 0;
            }
            column.addAll(rows.subList(i, n));
            used += need;
            i = n;
        }
        if (!column.isEmpty()) {
            columns.add(new Column(column));
        }
        return columns;
    }

    private static int groupEnd(List<Row> rows, int from) {
        int n = from;
        while (n < rows.size() - 1 && rows.get(n).withNext()) {
            n++;
        }
        return n + 1;
    }
}
