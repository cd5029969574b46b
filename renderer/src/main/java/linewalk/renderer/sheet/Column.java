package linewalk.renderer.sheet;

import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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

    /** Where rows stand that tell of something, by its key, in a column painted at a place. */
    public Map<String, Rectangle2D> places(double xPt, double yPt, double widthPt) {
        Map<String, Rectangle2D> places = new HashMap<>();
        double y = yPt;
        for (Row row : rows) {
            if (row.about() != null) {
                places.put(row.about(), new Rectangle2D.Double(xPt, y, widthPt, row.heightPt()));
            }
            y += row.heightPt();
        }
        return places;
    }

    public boolean heads(String heading) {
        return rows.stream().anyMatch(r -> heading.equals(r.heading()));
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
