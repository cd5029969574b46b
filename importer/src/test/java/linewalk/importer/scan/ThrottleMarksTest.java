package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Arc2D;
import java.awt.geom.QuadCurve2D;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Arrows across walls, circles and lines: thinning makes one knot of all of them. */
class ThrottleMarksTest {

    private static Point px(double x, double y) {
        return new Point(x / Sketch.PX_PER_PT, y / Sketch.PX_PER_PT);
    }

    private static List<Stroke> from(Marks m, Point end, double withinPt) {
        return m.strokes().stream()
                .filter(s -> Math.min(s.first().distancePt(end), s.last().distancePt(end)) < withinPt)
                .toList();
    }

    /** The arrow runs along one half of a wall, and its head into the end of the other wall. */
    private static Sketch throttle() {
        return new Sketch()
                .line(6, 300, 400, 900, 400)
                .stroke(5, new QuadCurve2D.Double(560, 355, 600, 425, 640, 355))
                .stroke(5, new QuadCurve2D.Double(560, 445, 600, 375, 640, 445))
                .line(4, 536, 346, 680, 468)
                .solid(680, 468, 648, 455, 662, 439);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void bothWallsOfAThrottleAreWhole(int wall) {
        double y = wall == 0 ? 355 : 445;
        List<Stroke> walls = throttle().marks().strokes().stream()
                .filter(s -> s.curved() && !s.closed())
                .toList();
        assertThat(walls).hasSize(2);
        assertThat(walls).anySatisfy(w -> {
            assertThat(w.first().distancePt(px(560, y))).isLessThan(2);
            assertThat(w.last().distancePt(px(640, y))).isLessThan(2);
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void theArrowAcrossThemIsOneStrokeFromEndToTip(int end) {
        Marks m = throttle().marks();
        List<Stroke> shaft = from(m, px(536, 346), 1.5);
        assertThat(shaft).hasSize(1);
        Point other = end == 0 ? px(536, 346) : px(680, 468);
        assertThat(from(m, other, 1.5)).isEqualTo(shaft);
        assertThat(m.fills()).hasSize(1);
        assertThat(m.fills().get(0).outline()).hasSize(3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.8})
    void anArrowAcrossACircleIsOneStroke(double skewDeg) {
        Marks m = new Sketch(skewDeg)
                .circle(7, 600, 400, 120)
                .line(5, 480, 520, 760, 240)
                .solid(760, 240, 728, 256, 744, 272)
                .line(8, 600, 280, 600, 100)
                .marks();
        List<Stroke> shaft = from(m, px(480, 520), 2);
        assertThat(shaft).hasSize(1);
        assertThat(from(m, px(760, 240), 2.5)).containsAll(shaft);
    }

    /** Walls that keep away from their line, and an arrow that cuts each where it is nearest to it. */
    @Test
    void wallsFarFromTheirLineAreWhole() {
        List<Stroke> walls = new Sketch()
                        .line(8, 600, 200, 600, 800)
                        .stroke(6, new Arc2D.Double(582 - 112, 444, 112, 112, -50, 100, Arc2D.OPEN))
                        .stroke(6, new Arc2D.Double(618, 444, 112, 112, 130, 100, Arc2D.OPEN))
                        .line(4, 530, 570, 670, 430)
                        .marks()
                        .strokes()
                        .stream()
                        .filter(s -> s.curved() && !s.closed())
                        .toList();
        assertThat(walls).hasSize(2).allSatisfy(w -> assertThat(w.first().distancePt(w.last()))
                .isGreaterThan(75 / Sketch.PX_PER_PT));
    }
}
