package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.List;
import linewalk.renderer.sheet.Row;
import linewalk.renderer.sheet.TextBlock;

/**
 * A headed part of the card.
 *
 * @param lead words before the rows
 * @param head of the table, repeated where the rows go on in another column
 * @param together never divided unless it is higher than a column
 */
record Block(String title, List<Row> lead, Row head, List<Row> rows, boolean together) {

    /** Heading, words and head of the table. */
    List<Row> start(TextBlock text) {
        List<Row> start = new ArrayList<>(text.heading(title));
        lead.forEach(r -> start.add(new Row(r.heightPt(), true, r.painter())));
        start.add(head);
        return start;
    }

    /** The heading once more; no bookmark leads there. */
    List<Row> again(TextBlock text) {
        List<Row> again = new ArrayList<>();
        text.heading(title + " (goes on)").forEach(r -> again.add(new Row(r.heightPt(), true, r.painter())));
        again.add(head);
        return again;
    }
}
