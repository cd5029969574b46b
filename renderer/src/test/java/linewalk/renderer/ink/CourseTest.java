package linewalk.renderer.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Dashes and marks along a line with corners. */
class CourseTest {

    private static Course course(double... xyPt) {
        Point2D[] points = new Point2D[xyPt.length / 2];
        for (int i = 0; i < points.length; i++) {
            points[i] = new Point2D.Double(xyPt[2 * i], xyPt[2 * i + 1]);
        }
        return new Course(List.of(points), p -> true);
    }

    @Test
    void aDashBendsWithTheCorner() {
        List<List<Point2D>> dashes = course(0, 0, 100, 0, 100, 50).dashes(10, 5);
        List<Point2D> bent =
                dashes.stream().filter(d -> d.size() == 3).findFirst().orElseThrow();
        assertThat(bent.get(1)).isEqualTo(new Point2D.Double(100, 0));
        assertThat(bent.get(0).distance(bent.get(1))).isCloseTo(10, within(1e-9));
        assertThat(bent.get(1).distance(bent.get(2))).isCloseTo(10, within(1e-9));
    }

    @Test
    void dashesBeginAndEndWithTheLineAndGapsAreNoShorterThanAsked() {
        for (double lengthPt = 20; lengthPt < 120; lengthPt += 0.7) {
            List<List<Point2D>> dashes = course(0, 0, lengthPt, 0).dashes(10, 5);
            assertThat(dashes).hasSizeGreaterThan(1);
            assertThat(dashes.get(0).get(0).getX()).isZero();
            double endPt = 0;
            for (int i = 0; i < dashes.size(); i++) {
                assertThat(dashes.get(i).get(0).getX() - endPt).isGreaterThan(i == 0 ? -1e-9 : 5 - 1e-9);
                endPt = dashes.get(i).get(1).getX();
            }
            assertThat(endPt).isCloseTo(lengthPt, within(1e-9));
        }
    }

    @Test
    void marksKeepOffWhatHasNoRoomForThem() {
        List<Point2D> line = List.of(new Point2D.Double(0, 0), new Point2D.Double(170, 0));
        assertThat(new Course(line, p -> p.getX() < 60 || p.getX() > 100).places(17))
                .extracting(Course.Place::xPt)
                .containsExactly(8.5, 25.5, 42.5, 59.5, 110.5, 127.5, 144.5, 161.5);
    }

    @Test
    void theOnlyMarkGivesWayToo() {
        List<Point2D> line = List.of(new Point2D.Double(0, 0), new Point2D.Double(20, 0));
        assertThat(new Course(line, p -> p.getX() < 6).places(17)).containsExactly(new Course.Place(5, 0, 1, 0));
    }

    @Test
    void evenAShortLineHasAMark() {
        assertThat(course(0, 0, 6, 0, 6, 9).places(17)).containsExactly(new Course.Place(6, 4.5, 0, 1));
        assertThat(course(3, 3, 3, 3).places(17)).isEmpty();
    }

    @Test
    void marksKeepClearOfCorners() {
        for (Course.Place p : course(0, 0, 100, 0, 100, 60).places(17)) {
            assertThat(new Point2D.Double(p.xPt(), p.yPt()).distance(100, 0)).isGreaterThan(8.4);
        }
    }

    @Test
    void theZigzagStartsAndEndsOnTheLine() {
        List<Point2D> bent = course(0, 0, 40, 0).zigzag(8, 3);
        assertThat(bent).hasSize(12);
        assertThat(bent.get(0)).isEqualTo(new Point2D.Double(0, 0));
        assertThat(bent.get(11)).isEqualTo(new Point2D.Double(40, 0));
        assertThat(bent.subList(1, 11)).allMatch(p -> Math.abs(p.getY()) == 3);
    }
}
