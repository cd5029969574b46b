package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Point;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Stroke;
import linewalk.importer.page.WholeStrokes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Dashed lines, hops and rings come back as the one stroke that they were drawn as. */
class DashesTest {

    private static final float[] DASHES = {36, 16};
    private static final float[] CHAIN = {60, 14, 8, 14};

    private static Shape dashed(double width, float[] pattern, Shape s) {
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, pattern, 0)
                .createStrokedShape(s);
    }

    /** Dashes as shapes, since the sketch's own pen draws whole lines. */
    private static Sketch with(Sketch sketch, Shape dashes) {
        return sketch.fill(dashes);
    }

    private static Shape line(double x0, double y0, double x1, double y1) {
        return new Line2D.Double(x0, y0, x1, y1);
    }

    private static List<Stroke> dashedOf(Sketch s) {
        return WholeStrokes.of(s.marks()).strokes().stream()
                .filter(x -> !x.dash().solid())
                .toList();
    }

    private static double px(double pt) {
        return pt * Sketch.PX_PER_PT;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1.3, 0.6})
    void aRowOfDashesIsOneDashedStroke(double skewDeg) {
        List<Stroke> found = dashedOf(with(new Sketch(skewDeg), dashed(4, DASHES, line(200, 400, 1190, 400))));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).dash().chain()).isFalse();
        assertThat(px(found.get(0).lengthPt())).isBetween(960.0, 1000.0);
        assertThat(px(found.get(0).dash().onPt())).isBetween(33.0, 40.0);
    }

    @Test
    void aDashedLinePassesUnderASolidOne() {
        Sketch s = with(new Sketch(), dashed(4, DASHES, line(200, 400, 1190, 400)));
        assertThat(dashedOf(s.line(7, 640, 200, 640, 700))).hasSize(1);
    }

    /** @param from where the first dash begins: the corner falls into the middle of a dash, near its ends, and into a gap */
    @ParameterizedTest
    @ValueSource(ints = {186, 200, 206, 212, 218})
    void dashesAroundACornerMeet(int from) {
        Path2D corner = new Path2D.Double();
        corner.moveTo(from, 300);
        corner.lineTo(700, 300);
        corner.lineTo(700, 800);
        List<Stroke> found = dashedOf(with(new Sketch(), dashed(4, DASHES, corner)));
        Point at = new Point(700 / Sketch.PX_PER_PT, 300 / Sketch.PX_PER_PT);
        assertThat(found).isNotEmpty();
        assertThat(found).allSatisfy(x -> assertThat(
                        x.points().stream().mapToDouble(at::distancePt).min().orElseThrow())
                .isLessThan(0.6));
    }

    @Test
    void aDashedLineEndsInTheDotOfAnother() {
        Sketch s = with(new Sketch(), dashed(4, DASHES, line(200, 400, 1190, 400)));
        with(s, dashed(4, DASHES, line(640, 830, 640, 400))).dot(640, 400, 16);
        Point dot = new Point(640 / Sketch.PX_PER_PT, 400 / Sketch.PX_PER_PT);
        assertThat(dashedOf(s))
                .filteredOn(x -> x.box().heightPt() > x.box().widthPt())
                .singleElement()
                .satisfies(x -> assertThat(
                                Math.min(x.first().distancePt(dot), x.last().distancePt(dot)))
                        .isLessThan(0.6));
    }

    @Test
    void aDashedLineGoesOnOverAnother() {
        Sketch s = with(new Sketch(), dashed(4, DASHES, line(200, 400, 1190, 400)));
        with(s, dashed(4, DASHES, line(640, 150, 640, 860)));
        assertThat(dashedOf(s)).hasSize(2);
    }

    @Test
    void theDashesOfARingAreNoFigures() {
        Sketch s = with(new Sketch(), dashed(4, new float[] {26, 14}, new Ellipse2D.Double(500, 300, 240, 240)))
                .text("1V1", 430, 430, 34);
        assertThat(dashesOf(s)).hasSizeGreaterThan(15).allSatisfy(b -> assertThat(b.middleX())
                .isGreaterThan(495));
    }

    private static Set<Blob> dashesOf(Sketch s) {
        Bits ink = Ink.of(s.grey());
        List<Blob> blobs = Blobs.of(ink);
        return Dashes.of(blobs, Thickness.of(blobs, 140), ink);
    }

    /** A valve's own pilot line: from its inlet over two corners to its side, a few dashes in all. */
    @Test
    void aDashAroundACornerIsNoLetter() {
        Path2D pilot = new Path2D.Double();
        pilot.moveTo(600, 300);
        pilot.lineTo(515, 300);
        pilot.lineTo(515, 408);
        pilot.lineTo(558, 408);
        Sketch s = with(new Sketch(), dashed(4, new float[] {26, 10}, pilot))
                .line(7, 602, 200, 602, 360)
                .line(4, 558, 360, 558, 480)
                .text("L", 430, 430, 34);
        assertThat(dashesOf(s))
                .anySatisfy(
                        b -> assertThat(Math.hypot(b.x0() - 513, b.y0() - 298)).isLessThan(4))
                .anySatisfy(
                        b -> assertThat(Math.hypot(b.x0() - 513, b.y1() - 410)).isLessThan(4))
                .allSatisfy(b -> assertThat(b.middleX()).isGreaterThan(495));
    }

    @Test
    void aChainOutlineIsClosed() {
        Sketch s = with(new Sketch(), dashed(4, CHAIN, new Rectangle2D.Double(300, 250, 700, 400)));
        assertThat(dashedOf(s)).singleElement().satisfies(x -> {
            assertThat(x.dash().chain()).isTrue();
            assertThat(x.first().distancePt(x.last())).isLessThan(0.1);
        });
    }

    /** Few dashes on a short side: their width may be measured badly. */
    @Test
    void aChainOutlineHasOnePen() {
        Path2D sides = new Path2D.Double();
        sides.moveTo(300, 550);
        sides.lineTo(800, 550);
        sides.lineTo(800, 250);
        sides.lineTo(300, 250);
        Sketch s = with(new Sketch(), dashed(3, CHAIN, sides));
        with(s, dashed(4.6, CHAIN, line(300, 250, 300, 550)));
        assertThat(dashedOf(s))
                .singleElement()
                .satisfies(x -> assertThat(x.dash().chain()).isTrue());
    }

    @Test
    void aDashedCircleIsOneRing() {
        Sketch s = with(new Sketch(), dashed(4, new float[] {26, 14}, new Ellipse2D.Double(500, 300, 240, 240)));
        assertThat(dashedOf(s)).singleElement().satisfies(x -> {
            assertThat(x.closed()).isTrue();
            assertThat(px(x.box().widthPt())).isBetween(234.0, 246.0);
        });
    }

    @Test
    void aHopIsPartOfItsLine() {
        Marks m = new Sketch()
                .line(7, 300, 400, 614, 400)
                .stroke(7, new Arc2D.Double(614, 374, 52, 52, 0, 180, Arc2D.OPEN))
                .line(7, 666, 400, 1000, 400)
                .line(7, 640, 200, 640, 700)
                .marks();
        List<Stroke> inside =
                m.strokes().stream().filter(s -> s.lengthPt() < 200).toList();
        assertThat(inside).hasSize(2);
        assertThat(inside).anySatisfy(s -> assertThat(px(s.lengthPt())).isBetween(690.0, 710.0));
    }

    @Test
    void aPortOnALineIsARing() {
        Marks m = new Sketch()
                .line(7, 300, 400, 1000, 400)
                .line(4, 640, 200, 640, 700)
                .circle(4, 640, 400, 18)
                .marks();
        assertThat(m.strokes().stream().filter(s -> s.closed() && s.lengthPt() < 100))
                .singleElement()
                .satisfies(s -> assertThat(px(s.box().widthPt())).isBetween(33.0, 39.0));
    }
}
