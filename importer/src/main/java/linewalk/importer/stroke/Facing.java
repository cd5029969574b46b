package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.List;

/** Which way upright rows read: the way in which their signs look like those of the level rows; else upwards. */
final class Facing {

    private Facing() {}

    static List<Row> of(List<Row> rows) {
        ShapeBook level = new ShapeBook();
        rows.stream().filter(r -> r.turn().deg() == 0).forEach(r -> r.signs().forEach(s -> level.of(s, r)));
        List<Row> out = new ArrayList<>();
        for (Row r : rows) {
            boolean upright = r.turn().deg() == 90 || r.turn().deg() == 270;
            Row turned = upright ? r.turnedRound() : r;
            out.add(turned != r && known(turned, level) > known(r, level) ? turned : r);
        }
        return out;
    }

    private static long known(Row row, ShapeBook level) {
        return row.signs().stream()
                .filter(s -> level.find(Shape.of(s, row)) != null)
                .count();
    }
}
