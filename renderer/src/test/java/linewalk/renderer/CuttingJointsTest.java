package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Point;
import org.junit.jupiter.api.Test;

/** Bands on a cutting hide the original's dots: what is joined gets one again, what only crosses a gap. */
class CuttingJointsTest {

    private static final double ALONG_PT = 16;
    private static final double ACROSS_PT = 12;

    private static Line line(String id, List<List<Point>> runs) {
        return new Line(id, Bench.page(1), LineKind.WORKING, null, null, 1, List.of(), runs);
    }

    private static List<Point> run(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return points;
    }

    private static Stay stay(Map<Integer, List<Point>> courses, Map<Integer, Line> lines) {
        return new Stay(Bench.page(1), null, null, 0, 0, List.of(), List.of(), List.of(), List.of(), courses, lines);
    }

    private static List<Path2D> gaps(List<Point> first, List<Point> then) {
        CuttingJoints joints = new CuttingJoints();
        joints.cut(line("a", List.of(first)), placed(first), ALONG_PT, ACROSS_PT);
        return joints.cut(line("b", List.of(then)), placed(then), ALONG_PT, ACROSS_PT);
    }

    private static List<Point2D> placed(List<Point> run) {
        return run.stream()
                .map(p -> (Point2D) new Point2D.Double(p.xPt(), p.yPt()))
                .toList();
    }

    @Test
    void threeWaysOfOneLineMeetInADot() {
        List<Point> main = run(0, 0, 50, 0);
        List<Point> on = run(50, 0, 100, 0);
        List<Point> branch = run(50, 0, 50, 40);
        Line line = line("a", List.of(main, on, branch));
        assertThat(CuttingJoints.of(stay(Map.of(0, main, 1, on, 2, branch), Map.of(0, line, 1, line, 2, line))))
                .containsExactly(new Point(50, 0));
    }

    @Test
    void aBendAndOtherLinesHaveNone() {
        List<Point> to = run(0, 0, 50, 0);
        List<Point> on = run(50, 0, 50, 40);
        List<Point> other = run(0, 20, 100, 20);
        Line bend = line("a", List.of(to, on));
        Line crossing = line("b", List.of(other));
        assertThat(CuttingJoints.of(stay(Map.of(0, to, 1, on, 2, other), Map.of(0, bend, 1, bend, 2, crossing))))
                .isEmpty();
    }

    @Test
    void theLineDrawnLaterInterruptsTheOther() {
        List<Path2D> gaps = gaps(run(50, 0, 50, 100), run(0, 50, 50, 50, 100, 50));
        assertThat(gaps).hasSize(1);
        assertThat(gaps.get(0).getBounds2D().getWidth()).isEqualTo(ALONG_PT);
        assertThat(gaps.get(0).getBounds2D().getCenterX()).isEqualTo(50);
        assertThat(gaps.get(0).getBounds2D().getHeight()).isEqualTo(ACROSS_PT);
    }

    @Test
    void whatOnlyTouchesIsWhole() {
        assertThat(gaps(run(50, 0, 50, 100), run(0, 50, 50, 50))).isEmpty();
    }
}
