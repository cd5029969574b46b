package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import linewalk.renderer.ink.LinePattern;
import linewalk.renderer.ink.LineStyle;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Net;
import org.junit.jupiter.api.Test;

/** Arrows and marks of change on lines keep clear of each other, of other lines and of their line's pattern. */
class LineSignsTest {

    private static final LineStyle STYLE = new LineStyle(Color.BLUE, 2, LinePattern.BEADS);
    private static final LineStyle PLAIN = new LineStyle(Color.BLUE, 2, LinePattern.SOLID);
    private static final double ARROW_PT = 12;

    private static Layout.Course line(String net, double... xyPt) {
        List<Point2D> points = IntStream.range(0, xyPt.length / 2)
                .mapToObj(i -> (Point2D) new Point2D.Double(xyPt[2 * i], xyPt[2 * i + 1]))
                .toList();
        return new Layout.Course(new Net(net, 0.5, List.of()), null, null, points);
    }

    /** All lines have changed, and oil goes to the right and down in them. */
    private static LineSigns signs(Layout.Course... lines) {
        return signs(STYLE, lines);
    }

    private static LineSigns signs(LineStyle style, Layout.Course... lines) {
        Layout layout = new Layout(300, 300, Map.of(), Arrays.asList(lines), List.of());
        return LineSigns.of(
                layout,
                (net, tree, p) -> {
                    NetTree.Piece piece = tree.at(p);
                    double dx = tree.to(piece).getX() - tree.from(piece).getX();
                    return dx == 0 ? new Point2D.Double(0, 1) : new Point2D.Double(1, 0);
                },
                c -> style,
                c -> true);
    }

    @Test
    void aLongLineHasBothApart() {
        LineSigns signs = signs(line("L", 0, 0, 100, 0));
        assertThat(signs.arrows()).singleElement().satisfies(a -> {
            assertThat(a.middle().getX()).isCloseTo(50, within(1e-9));
            assertThat(a.tip().getX()).isCloseTo(56, within(1e-9));
        });
        assertThat(signs.changes()).singleElement().satisfies(c -> assertThat(c.at().getX())
                .isCloseTo(25, within(1e-9)));
    }

    @Test
    void onAShortLineTheArrowGivesWay() {
        LineSigns signs = signs(PLAIN, line("L", 0, 0, 20, 0));
        assertThat(signs.arrows()).isEmpty();
        assertThat(signs.changes()).hasSize(1);
    }

    @Test
    void aShortLineKeepsThePatternThatItIsKnownBy() {
        assertThat(signs(line("L", 0, 0, 30, 0)).changes()).isEmpty();
        assertThat(signs(PLAIN, line("L", 0, 0, 30, 0)).changes()).hasSize(1);
    }

    @Test
    void whatIsHeldIsSaidBeforeTheWay() {
        LineStyle held = new LineStyle(Color.RED, 4, LinePattern.BARS);
        assertThat(signs(held, line("L", 0, 0, 30, 0)).arrows()).isEmpty();
        assertThat(signs(held, line("L", 0, 0, 60, 0)).arrows()).hasSize(1);
    }

    @Test
    void aShortLineThatHasNotChangedKeepsItsArrowWithin() {
        Layout layout = new Layout(300, 300, Map.of(), List.of(line("L", 0, 0, 20, 0)), List.of());
        LineSigns signs = LineSigns.of(layout, (n, t, p) -> new Point2D.Double(-1, 0), c -> STYLE, c -> false);
        assertThat(signs.arrows()).singleElement().satisfies(a -> {
            assertThat(a.tip().getX()).isGreaterThanOrEqualTo(0);
            assertThat(a.tip().getX() + ARROW_PT).isLessThanOrEqualTo(20);
        });
    }

    @Test
    void theMarkGoesToAnotherStretchOfTheLineWhereOneIsFull() {
        LineSigns signs = signs(PLAIN, line("L", 0, 0, 24, 0, 24, 20));
        assertThat(signs.arrows()).hasSize(1);
        assertThat(signs.changes()).singleElement().satisfies(c -> assertThat(c.at().getX())
                .isEqualTo(24));
    }

    @Test
    void theMarkKeepsOffTheEndsOfItsStretch() {
        LineSigns signs = signs(PLAIN, line("L", 0, 0, 16, 0));
        assertThat(signs.changes()).singleElement().satisfies(c -> assertThat(c.at().getX())
                .isBetween(6.0, 10.0));
    }

    @Test
    void neitherStandsOnACrossing() {
        LineSigns signs = signs(line("L", 0, 50, 100, 50), line("M", 50, 0, 50, 90), line("N", 25, 0, 25, 100));
        Point2D crossing = new Point2D.Double(50, 50);
        assertThat(signs.arrows())
                .isNotEmpty()
                .allSatisfy(a -> assertThat(a.middle().distance(crossing)).isGreaterThan(8));
        assertThat(signs.changes()).isNotEmpty().allSatisfy(c -> assertThat(c.at().distance(crossing))
                .isGreaterThan(8));
    }

    @Test
    void thePatternHasNoRoomAtEither() {
        LineSigns signs = signs(line("L", 0, 0, 100, 0));
        assertThat(IntStream.of(0, 10, 40, 50, 60, 75).filter(x -> signs.isFree(new Point2D.Double(x, 0), 8)))
                .containsExactly(0, 10, 75);
        assertThat(signs.isFree(new Point2D.Double(25, 0), 8)).isFalse();
    }
}
