package linewalk.renderer.sheet;

import java.util.List;

/** The rows that one column of one page received. */
public record Column(List<Row> rows) {

    public Column {
        rows = List.copyOf(rows);
    }

    public void paint(Canvas canvas, double xPt, double yPt) {
        double y = yPt;
        for (Row row : rows) {
            row.painter().paint(canvas, xPt, y);
            y += row.heightPt();
        }
    }
}
