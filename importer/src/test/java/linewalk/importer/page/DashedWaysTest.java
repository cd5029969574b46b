package linewalk.importer.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import org.junit.jupiter.api.Test;

/** Dashes written one by one around corners. */
class DashedWaysTest {

    private static Stroke line(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return new Stroke(points, false, false, 0.5, Dash.SOLID, false);
    }

    private static List<Stroke> join(Stroke... strokes) {
        return DashedWays.join(List.of(strokes), 1);
    }

    @Test
    void aPilotLineWithShortLegs() {
        List<Stroke> out = join(line(0, 0, 4, 0), line(6, 0, 8, 0, 8, 2), line(8, 4, 8, 8), line(8, 10, 8, 12, 10, 12));

        assertThat(out).singleElement().satisfies(s -> {
            assertThat(s.points())
                    .containsExactly(new Point(0, 0), new Point(8, 0), new Point(8, 12), new Point(10, 12));
            assertThat(s.dash()).isEqualTo(new Dash(4, false));
        });
    }

    @Test
    void theChainLineAroundAUnit() {
        List<Stroke> out = join(
                line(10, 0, 0, 0, 0, 10),
                line(0, 13, 0, 15),
                line(0, 18, 0, 38),
                line(0, 41, 0, 43),
                line(0, 46, 0, 50, 16, 50),
                line(19, 50, 21, 50),
                line(24, 50, 40, 50, 40, 46),
                line(40, 43, 40, 41),
                line(40, 38, 40, 18),
                line(40, 15, 40, 13),
                line(40, 10, 40, 0, 18, 0),
                line(15, 0, 13, 0));

        assertThat(out).singleElement().satisfies(s -> {
            assertThat(s.closed()).isTrue();
            assertThat(s.points())
                    .containsExactlyInAnyOrder(new Point(0, 0), new Point(0, 50), new Point(40, 50), new Point(40, 0));
            assertThat(s.dash().chain()).isTrue();
        });
    }

    @Test
    void aFewDashesGoOnFromADashedLine() {
        Stroke dashed =
                new Stroke(List.of(new Point(-60, 0), new Point(8, 0)), false, false, 0.5, new Dash(3, false), false);

        assertThat(join(dashed, line(8, 0, 8, 4), line(8, 6, 8, 10))).hasSize(2);
        assertThat(join(line(8, 0, 8, 4), line(8, 6, 8, 10)))
                .as("alone they are none")
                .hasSize(2);
        assertThat(join(dashed, line(8, 0, 8, 4), line(8, 6, 8, 10)))
                .allMatch(s -> !s.dash().solid());
    }

    @Test
    void unevenGapsAreNone() {
        assertThat(join(line(0, 0, 4, 0), line(5, 0, 9, 0), line(13, 0, 17, 0), line(18, 0, 22, 0)))
                .hasSize(4);
    }
}
