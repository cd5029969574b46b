package linewalk.renderer.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import linewalk.renderer.sheet.Column;
import linewalk.renderer.sheet.Row;
import org.junit.jupiter.api.Test;

/** Tables that go on in another column say so and have their head again. */
class PouringTest {

    private static final Row HEAD = Row.gap(20);
    private static final Row ROW = Row.gap(30);
    private static final Row SPARE = Row.gap(31);
    /** Heading and head of a table. */
    private static final double START_PT = 49;

    private static Block block(int rows, int spare, boolean together) {
        return new Block(
                "Table", List.of(), HEAD, Collections.nCopies(rows, ROW), Collections.nCopies(spare, SPARE), together);
    }

    private static double height(Column c) {
        return c.rows().stream().mapToDouble(Row::heightPt).sum();
    }

    private static long count(Column c, Row row) {
        return c.rows().stream().filter(row::equals).count();
    }

    @Test
    void oneColumnHoldsWhatFits() {
        List<Column> columns = Pouring.pour(List.of(block(3, 0, false)), n -> START_PT + 90);
        assertThat(columns).hasSize(1);
        assertThat(height(columns.get(0))).isEqualTo(START_PT + 90);
    }

    @Test
    void theHeadStandsInEachColumnAndNoRowIsLost() {
        List<Column> columns = Pouring.pour(List.of(block(5, 0, false)), n -> START_PT + 65);
        assertThat(columns).hasSize(3);
        assertThat(columns).allSatisfy(c -> assertThat(count(c, HEAD)).isEqualTo(1));
        assertThat(columns).allSatisfy(c -> assertThat(height(c)).isLessThanOrEqualTo(START_PT + 65));
        assertThat(columns.stream().mapToLong(c -> count(c, ROW)).sum()).isEqualTo(5);
    }

    @Test
    void onlyTheFirstHeadingIsLedTo() {
        List<Column> columns = Pouring.pour(List.of(block(5, 0, false)), n -> START_PT + 65);
        assertThat(columns.stream()
                        .flatMap(c -> c.rows().stream())
                        .filter(r -> r.heading() != null)
                        .map(Row::heading))
                .containsExactly("Table");
    }

    @Test
    void spareRowsBeginNoColumn() {
        List<Column> columns = Pouring.pour(List.of(block(2, 2, false)), n -> START_PT + 60 + 31);
        assertThat(columns).hasSize(1);
        assertThat(count(columns.get(0), SPARE)).isEqualTo(1);
    }

    @Test
    void whatBelongsTogetherIsNotDivided() {
        List<Column> columns = Pouring.pour(List.of(block(1, 0, false), block(3, 0, true)), n -> 2 * START_PT + 100);
        assertThat(columns).hasSize(2);
        assertThat(count(columns.get(1), ROW)).isEqualTo(3);
    }
}
