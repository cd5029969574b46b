package linewalk.renderer.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * One row of running text that is never divided.
 *
 * @param withNext stays on the same column as the row after it
 * @param heading what the row heads, or null
 * @param about a key of what the row tells of, or null
 */
public record Row(double heightPt, boolean withNext, Painter painter, String heading, String about) {

    public Row(double heightPt, boolean withNext, Painter painter) {
        this(heightPt, withNext, painter, null, null);
    }

    public Row heading(String text) {
        return new Row(heightPt, withNext, painter, text, about);
    }

    public Row about(String key) {
        return new Row(heightPt, withNext, painter, heading, key);
    }

    /** Draws a row whose top left corner is given. */
    @FunctionalInterface
    public interface Painter {
        void paint(Canvas canvas, double xPt, double yPt);
    }

    /** Rows that are never divided from each other. */
    public static List<Row> together(List<Row> rows) {
        List<Row> joined = new ArrayList<>(rows);
        for (int i = 0; i + 1 < rows.size(); i++) {
            Row r = rows.get(i);
            joined.set(i, new Row(r.heightPt, true, r.painter, r.heading, r.about));
        }
        return joined;
    }

    public static Row gap(double heightPt) {
        return new Row(heightPt, false, (c, x, y) -> {});
    }
}
