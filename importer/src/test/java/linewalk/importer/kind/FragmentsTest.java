package linewalk.importer.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;
import linewalk.importer.symbol.Outline;
import org.junit.jupiter.api.Test;

/** A spring beside a square of which a scan left but bits. */
class FragmentsTest {

    private static final Shape SQUARE = Shape.of(new Outline(
            new Stroke(
                    List.of(new Point(0, 0), new Point(16, 0), new Point(16, 16), new Point(0, 16)),
                    true,
                    false,
                    1,
                    Dash.SOLID,
                    false),
            new Box(0, 0, 16, 16),
            false));

    private static Segment bit(double x0, double y0, double x1, double y1) {
        return new Segment(new Point(x0, y0), new Point(x1, y1));
    }

    private static List<Segment> heap() {
        return new ArrayList<>(List.of(
                bit(17, 6, 18.5, 11),
                bit(19, 5, 19, 7.5),
                bit(19, 7.5, 21, 10),
                bit(21, 7, 21, 11.5),
                bit(22, 5, 24, 11)));
    }

    @Test
    void theHeapIsTheSpring() {
        List<Segment> solid = heap();
        Segment line = bit(8, 16, 8, 60);
        solid.add(line);

        assertThat(new Fragments(solid, new ArrayList<>(), 0.7).springOn(SQUARE))
                .hasValueSatisfying(s -> {
                    assertThat(s.from()).isEqualTo(new Point(16, 8));
                    assertThat(s.axis().dx()).isEqualTo(1);
                });
        assertThat(solid).containsExactly(line);
    }

    @Test
    void aPipeBesideTheSquareIsNone() {
        List<Segment> solid = new ArrayList<>(
                List.of(bit(16, 8, 20, 8), bit(20, 8, 20, 10), bit(20, 10, 24, 10), bit(24, 10, 24, 6)));

        assertThat(new Fragments(solid, new ArrayList<>(), 0.7).springOn(SQUARE))
                .isEmpty();
    }
}
