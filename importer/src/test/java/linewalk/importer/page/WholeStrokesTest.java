package linewalk.importer.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import org.junit.jupiter.api.Test;

/** Dashes written one by one, in straight rows and around corners. */
class WholeStrokesTest {

    private final List<Stroke> strokes = new ArrayList<>();

    private WholeStrokesTest line(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        strokes.add(new Stroke(points, false, false, 0.7, Dash.SOLID, false));
        return this;
    }

    private List<Stroke> whole() {
        return WholeStrokes.of(new Marks(800, 600, strokes, List.of(), List.of(), List.of()))
                .strokes();
    }

    @Test
    void aRowOfDashesEndsWhereTheNextOneBends() {
        // a chain box with more dashes on top than at its sides; a line inside it points at the gap before a corner
        line(376, 239, 399, 239)
                .line(402, 239, 404, 239)
                .line(407, 239, 430, 239)
                .line(433, 239, 435, 239);
        line(438, 239, 448, 239, 448, 251)
                .line(448, 254, 448, 256)
                .line(448, 259, 448, 282)
                .line(448, 285, 448, 287);
        line(448, 290, 448, 295, 430, 295)
                .line(427, 295, 425, 295)
                .line(422, 295, 399, 295)
                .line(396, 295, 394, 295);
        line(391, 295, 376, 295, 376, 287)
                .line(376, 284, 376, 282)
                .line(376, 279, 376, 256)
                .line(376, 253, 376, 251);
        line(376, 248, 376, 239);
        line(400, 245, 437, 245, 437, 262);

        assertThat(whole()).filteredOn(s -> s.dash().chain()).singleElement().satisfies(s -> assertThat(s.closed())
                .isTrue());
    }
}
