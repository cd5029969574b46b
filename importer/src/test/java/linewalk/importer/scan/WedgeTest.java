package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The triangle of an arrowhead lies as it was drawn, also where the line that it ends makes its base uneven. */
class WedgeTest {

    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8})
    void theBaseIsSquareToTheHead(int bumpPx) {
        Bits ink = new Bits(120, 100);
        for (int y = 38; y <= 62; y++) {
            ink.fill(y, 40, 80 - (int) Math.round(3.2 * Math.abs(y - 50)), true);
        }
        for (int y = 51; y < 55; y++) {
            ink.fill(y, 40 - bumpPx, 40, true);
        }
        Opened opened = new Opened(ink, new int[] {15, 20, 105, 80}, 2.2);
        boolean[] region = opened.around(47, 50);
        List<double[]> triangle = new Wedge(ink, opened, region).fitted(Hull.few(Hull.around(opened, region)));
        double[] base =
                triangle.stream().mapToDouble(p -> p[0]).filter(x -> x < 60).toArray();
        assertThat(base).hasSize(2);
        assertThat(base[0]).isCloseTo(base[1], within(1.0));
    }
}
