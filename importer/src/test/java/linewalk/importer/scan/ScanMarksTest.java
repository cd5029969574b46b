package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is drawn on paper comes back as the marks that a vector page would have. */
class ScanMarksTest {

    private static Point px(double x, double y) {
        return new Point(x / Sketch.PX_PER_PT, y / Sketch.PX_PER_PT);
    }

    private static List<Stroke> inside(Marks m) {
        return m.strokes().stream().filter(s -> s.lengthPt() < 200).toList();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1.5, 0.7, 1.5})
    void aLineIsOneStrokeWithItsWidth(double skewDeg) {
        List<Stroke> drawn =
                inside(new Sketch(skewDeg).line(6, 300, 400, 900, 400).marks());
        assertThat(drawn).hasSize(1);
        assertThat(drawn.get(0).points()).hasSize(2);
        assertThat(drawn.get(0).first().distancePt(px(300, 400))).isLessThan(0.4);
        assertThat(drawn.get(0).last().distancePt(px(900, 400))).isLessThan(0.4);
        assertThat(drawn.get(0).first().yPt()).isCloseTo(drawn.get(0).last().yPt(), within(1e-9));
        assertThat(drawn.get(0).widthPt()).isCloseTo(6 / Sketch.PX_PER_PT, within(0.32));
    }

    @Test
    void linesThatCrossStayWhole() {
        List<Stroke> drawn = inside(new Sketch()
                .line(6, 300, 400, 900, 400)
                .line(6, 600, 200, 600, 700)
                .marks());
        assertThat(drawn).hasSize(2);
    }

    @Test
    void anEndOnALineIsOnIt() {
        List<Stroke> drawn = inside(new Sketch()
                .line(6, 300, 400, 900, 400)
                .line(6, 600, 400, 600, 700)
                .marks());
        assertThat(drawn).hasSize(2);
        assertThat(drawn).anySatisfy(s -> assertThat(
                        Math.min(s.first().distancePt(px(600, 400)), s.last().distancePt(px(600, 400))))
                .isLessThan(0.4));
    }

    @Test
    void aBoxIsClosedAndAPipeEndsAtIt() {
        Marks m = new Sketch()
                .stroke(4, new java.awt.Rectangle(500, 400, 80, 80))
                .line(4, 540, 250, 540, 400)
                .marks();
        List<Stroke> closed = inside(m).stream().filter(Stroke::closed).toList();
        assertThat(closed).hasSize(1);
        assertThat(closed.get(0).points()).hasSize(4);
        assertThat(inside(m)).hasSize(2);
    }

    /** Two pipes of a cylinder that a third line joins make a field below it, nearly of its pen. */
    @Test
    void aFieldBetweenThePipesOfABoxIsNoPartOfIt() {
        Marks m = new Sketch()
                .stroke(3, new java.awt.Rectangle(500, 300, 90, 50))
                .line(5, 516, 350, 516, 600)
                .line(5, 574, 350, 574, 600)
                .line(5, 516, 420, 574, 420)
                .marks();
        List<Stroke> closed = inside(m).stream().filter(Stroke::closed).toList();
        assertThat(closed).hasSize(1);
        assertThat(closed.get(0).box().heightPt()).isCloseTo(50 / Sketch.PX_PER_PT, within(0.4));
    }

    /** Its dashes are short against its radius, and a leader and two pipes meet some of them. */
    @Test
    void aDashedCircleIsOneRing() {
        Sketch s = new Sketch();
        for (int i = 0; i < 30; i++) {
            s.stroke(4, new java.awt.geom.Arc2D.Double(437, 337, 246, 246, 12 * i + 2, 7, java.awt.geom.Arc2D.OPEN));
        }
        Marks m = s.line(5, 560, 150, 560, 800).line(3, 680, 482, 1000, 520).marks();
        List<Stroke> rings = m.strokes().stream()
                .filter(k -> k.closed() && !k.dash().solid())
                .toList();
        assertThat(rings).hasSize(1);
        assertThat(rings.get(0).box().widthPt()).isCloseTo(246 / Sketch.PX_PER_PT, within(0.6));
    }

    @Test
    void aCircleThatLinesMeetIsOneRing() {
        Marks m = new Sketch()
                .circle(4, 560, 460, 60)
                .line(4, 560, 250, 560, 400)
                .line(4, 620, 460, 800, 460)
                .marks();
        List<Stroke> closed = inside(m).stream().filter(Stroke::closed).toList();
        assertThat(closed).hasSize(1);
        assertThat(closed.get(0).box().widthPt()).isCloseTo(120 / Sketch.PX_PER_PT, within(0.4));
    }

    @Test
    void whereThePenChangesTwoStrokesMeet() {
        List<Stroke> drawn = inside(new Sketch()
                .line(4, 300, 400, 450, 400)
                .line(9, 450, 400, 900, 400)
                .marks());
        assertThat(drawn).hasSize(2);
        assertThat(drawn.stream()
                        .map(s -> Math.round(s.widthPt() * Sketch.PX_PER_PT))
                        .sorted()
                        .toList())
                .satisfies(w -> assertThat(w.get(1) - w.get(0)).isBetween(4L, 6L));
    }

    @Test
    void anArrowheadIsAFilledTriangleOfThreeCorners() {
        Marks m = new Sketch()
                .line(4, 300, 400, 900, 400)
                .solid(900, 400, 860, 386, 860, 414)
                .marks();
        assertThat(m.fills()).hasSize(1);
        Fill head = m.fills().get(0);
        assertThat(head.outline()).hasSize(3);
        assertThat(head.outline())
                .anySatisfy(p -> assertThat(p.distancePt(px(900, 400))).isLessThan(0.8));
    }

    @Test
    void aJoinDotIsRoundAndACrossingIsNone() {
        Marks m = new Sketch()
                .line(6, 300, 400, 900, 400)
                .line(6, 600, 200, 600, 700)
                .line(6, 700, 200, 700, 700)
                .dot(600, 400, 13)
                .marks();
        assertThat(m.fills()).hasSize(1);
        assertThat(m.fills().get(0).curved()).isTrue();
        assertThat(m.fills().get(0).box().center().distancePt(px(600, 400))).isLessThan(0.5);
    }

    @Test
    void specksAreNothing() {
        Sketch s = new Sketch();
        for (int i = 0; i < 60; i++) {
            s.dot(150 + 37 * (i % 30), 200 + 300 * (i / 30), 1.2);
        }
        assertThat(inside(s.marks())).isEmpty();
    }
}
