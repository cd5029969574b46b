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

    /** Bookmarks to the headings of a column painted at a height of a page. */
    public void bookmark(Page page, double yPt) {
        double y = yPt;
        for (Row row : rows) {
            if (row.heading() != null) {
                page.bookmark(row.heading(), y);
            }
            y += row.heightPt();
        }
    }
}
