package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A hose bends more in its middle than at its ends: its arcs are one bend. */
class BendsTest {

    /** An arc about a middle, in degrees clockwise from the right. */
    private static Bends.Bend arc(double x, double y, double r, int from, int to) {
        List<double[]> points = new ArrayList<>();
        int step = from < to ? 10 : -10;
        for (int a = from; a != to + step; a += step) {
            points.add(new double[] {x + r * Math.cos(Math.toRadians(a)), y + r * Math.sin(Math.toRadians(a))});
        }
        return new Bends.Bend(points, 6);
    }

    @Test
    void arcsThatGoOnSmoothlyAreOne() {
        assertThat(Bends.whole(List.of(arc(100, 100, 50, 0, 40), arc(100, 100, 50, 80, 40))))
                .singleElement()
                .satisfies(b -> assertThat(b.points()).hasSize(9));
    }

    @Test
    void arcsThatMeetInACornerAreTwo() {
        assertThat(Bends.whole(List.of(arc(100, 100, 50, 0, 90), arc(100, 200, 50, -90, 0))))
                .hasSize(2);
    }

    @Test
    void arcsThatDoNotTouchAreTwo() {
        assertThat(Bends.whole(List.of(arc(100, 100, 50, 0, 40), arc(100, 100, 50, 60, 90))))
                .hasSize(2);
    }
}
