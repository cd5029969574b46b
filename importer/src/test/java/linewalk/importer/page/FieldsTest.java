package linewalk.importer.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** Fields come in one order, whatever objects their sides are. */
class FieldsTest {

    private static final int MOST = 6;

    private final GeometryFactory factory = new GeometryFactory();

    /** Corners of the fields of a grid of squares, made of new objects each time. */
    private List<String> grid() {
        Polygonizer polygonizer = new Polygonizer();
        for (int x = 0; x <= MOST; x++) {
            for (int y = 0; y <= MOST; y++) {
                if (x < MOST) {
                    polygonizer.add(side(x, y, x + 1, y));
                }
                if (y < MOST) {
                    polygonizer.add(side(x, y, x, y + 1));
                }
            }
        }
        return Fields.of(polygonizer).stream().map(Object::toString).toList();
    }

    private LineString side(double x0, double y0, double x1, double y1) {
        return factory.createLineString(new Coordinate[] {new Coordinate(x0, y0), new Coordinate(x1, y1)});
    }

    @Test
    void theSameSidesGiveTheSameFieldsInTheSameOrder() {
        List<String> fields = grid();
        assertThat(fields).hasSize(MOST * MOST);
        for (int i = 0; i < 5; i++) {
            assertThat(grid()).isEqualTo(fields);
        }
    }

    @Test
    void aFieldBeginsAtItsLeastCornerAndRunsClockwise() {
        assertThat(grid().get(0)).isEqualTo("POLYGON ((0 0, 0 1, 1 1, 1 0, 0 0))");
    }
}
