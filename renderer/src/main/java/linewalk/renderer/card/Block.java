package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.List;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Row;

/**
 * A headed part of the card.
 *
 * @param lead words before the rows
 * @param head of the table, repeated where the rows go on in another column
 * @param spare empty rows after them, left out where they would begin another column
 * @param together never divided unless it is higher than a column
 */
record Block(String title, List<Row> lead, Row head, List<Row> rows, List<Row> spare, boolean together) {

    private static final double SIZE_PT = 14;

    /** Heading, words and head of the table. */
    List<Row> start() {
        List<Row> start = new ArrayList<>(heading(title, title));
        lead.forEach(r -> start.add(new Row(r.heightPt(), true, r.painter())));
        start.add(head);
        return start;
    }

    /** The heading once more; no bookmark leads there. */
    List<Row> again() {
        List<Row> again = new ArrayList<>(heading(title + " (goes on)", null));
        again.add(head);
        return again;
    }

    private static List<Row> heading(String words, String bookmark) {
        Row.Painter painter = (c, x, y) -> {
            c.pen(Ink.BLACK, Ink.line(1));
            c.text(words, x, y + SIZE_PT, SIZE_PT);
        };
        return List.of(new Row(9, true, (c, x, y) -> {}), new Row(SIZE_PT + 6, true, painter).heading(bookmark));
    }
}
