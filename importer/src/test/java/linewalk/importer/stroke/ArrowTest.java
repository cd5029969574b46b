package linewalk.importer.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.importer.lettering.Cell;
import linewalk.importer.page.Marks;
import org.junit.jupiter.api.Test;

/** Arrows as painted outlines, and letters that are none. */
class ArrowTest {

    /** Tip, barbs and shaft of an arrow to the right, about a baseline at y 304; {@code way} -1 turns it round. */
    private static String arrow(int way) {
        double[] xy = {105, 0, 99, -3, 100, -0.5, 92, -0.5, 92, 0.5, 100, 0.5, 99, 3};
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] = 400 + way * (xy[i] - 100);
            xy[i + 1] += 300;
        }
        Blob blob = BlobFinder.find(new Written().fill(xy).marks()).get(0);
        Turn level = Turn.of(0);
        Placed sign = Placed.of(blob, level);
        return ArrowSign.of(sign, new Row(level, List.of(sign), 10, 304, 0, Cell.NONE));
    }

    @Test
    void aPaintedArrowPointsWhereItsTipIs() {
        assertThat(arrow(1)).isEqualTo("\u2192");
        assertThat(arrow(-1)).isEqualTo("\u2190");
    }

    @Test
    void lettersAreNoArrows() {
        String all = "ABCDEFGHJKLMNOPQRSTUVWXYZabcdeghkmnopqrsuvwxyz0123456789+-=/<>()[]";
        noArrows(new Written().painted(100, 900, 10, all).marks());
        noArrows(new Written().text(100, 900, 10, 0, "ABDEHILMNOPRSTUV12347/-").marks());
    }

    private static void noArrows(Marks marks) {
        List<Row> rows = PageInk.of(marks).rows();
        assertThat(rows).isNotEmpty();
        for (Row r : rows) {
            assertThat(r.signs().stream().map(s -> ArrowSign.of(s, r))).containsOnlyNulls();
        }
    }
}
