package linewalk.tests.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;
import linewalk.linker.step.PressureClass;
import linewalk.renderer.ink.Palette;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Marked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Bends, crossings and length of flow lines, and where they may not run. */
class LineFiguresTest {

    private static double figure(String name, Consumer<Canvas> drawing) {
        return Sheet.measured(drawing).figures().get(name);
    }

    private static List<String> kinds(Consumer<Canvas> drawing) {
        return Sheet.measured(drawing).overlaps().stream().map(Overlap::kind).toList();
    }

    /** Two lines that cross once, one of them with two corners. */
    private static void two(Canvas c) {
        Sheet.line(c, "L-1", 20, 100, 280, 100);
        Sheet.line(c, "L-2", 50, 20, 150, 20, 150, 180, 200, 180);
    }

    @Test
    void bendsCrossingsAndLength() {
        assertThat(figure("lines.bends", LineFiguresTest::two)).isEqualTo(2);
        assertThat(figure("lines.crossings", LineFiguresTest::two)).isEqualTo(1);
        assertThat(figure("lines.mm", LineFiguresTest::two)).isCloseTo((260 + 310) * 25.4 / 72, within(0.01));
        assertThat(kinds(LineFiguresTest::two)).isEmpty();
    }

    @Test
    void aJunctionIsNoCrossing() {
        assertThat(figure("lines.crossings", c -> {
                    Sheet.line(c, "L-1", 20, 100, 280, 100);
                    Sheet.line(c, "L-2", 150, 100, 150, 180);
                }))
                .isZero();
    }

    /** A corner on the way is no bend, and a point on a straight line is none. */
    @Test
    void aPointOnAStraightLineIsNoBend() {
        assertThat(figure("lines.bends", c -> Sheet.line(c, "L-1", 20, 100, 100, 100, 280, 100)))
                .isZero();
    }

    @Test
    void aNetMayRunTogetherAndCountsOnce() {
        Consumer<Canvas> fork = c -> {
            Sheet.line(c, "L-1", 20, 100, 150, 100, 150, 50);
            Sheet.line(c, "L-1", 20, 100, 150, 100, 150, 150);
        };
        assertThat(kinds(fork)).isEmpty();
        assertThat(figure("lines.mm", fork)).isCloseTo(230 * 25.4 / 72, within(0.01));
        assertThat(figure("lines.bends", fork)).isEqualTo(1);
    }

    @Test
    void twoNetsMayNot() {
        assertThat(kinds(c -> {
                    Sheet.line(c, "L-1", 20, 100, 150, 100, 150, 50);
                    Sheet.line(c, "L-2", 40, 100, 150, 100, 150, 150);
                }))
                .containsExactly("line-line");
        assertThat(kinds(c -> {
                    Sheet.line(c, null, 20, 100, 150, 100);
                    Sheet.line(c, null, 40, 100, 280, 100);
                }))
                .containsExactly("line-line");
    }

    @Test
    void aLineEndsAtASymbolAndNeverRunsThroughOne() {
        Rectangle2D box = new Rectangle2D.Double(130, 80, 40, 40);
        assertThat(kinds(c -> {
                    Marked.symbol(c, "0V1", box, k -> k.draw(box));
                    Sheet.line(c, "L-1", 20, 100, 130, 100);
                    Sheet.line(c, "L-2", 20, 120, 280, 120);
                }))
                .isEmpty();
        assertThat(kinds(c -> {
                    Marked.symbol(c, "0V1", box, k -> k.draw(box));
                    Sheet.line(c, "L-1", 20, 110, 280, 110);
                }))
                .containsExactly("line-symbol");
    }

    @Test
    void symbolsKeepApart() {
        Rectangle2D box = new Rectangle2D.Double(130, 80, 40, 40);
        Rectangle2D beside = new Rectangle2D.Double(170, 80, 40, 40);
        Rectangle2D within = new Rectangle2D.Double(165, 100, 40, 40);
        assertThat(kinds(c -> {
                    Marked.symbol(c, "0V1", box, k -> k.draw(box));
                    Marked.symbol(c, "0V2", beside, k -> k.draw(beside));
                }))
                .isEmpty();
        assertThat(kinds(c -> {
                    Marked.symbol(c, "0V1", box, k -> k.draw(box));
                    Marked.symbol(c, "0V2", within, k -> k.draw(within));
                }))
                .containsExactly("symbol-symbol");
    }

    /** Bars, beads, swings and gaps of all patterns stay with their line, on long parts and on short ones. */
    @ParameterizedTest
    @EnumSource(PressureClass.class)
    void patternsFollowTheCourse(PressureClass lineClass) {
        List<Point2D> course = Sheet.course(20, 100, 150, 100, 150, 112, 280, 112);
        Quality quality = Sheet.measured(c ->
                Marked.line(c, "L-1", course, k -> Palette.OWN.style(lineClass).paint(k, course)));
        assertThat(quality.overlaps()).isEmpty();
        assertThat(quality.figures()).containsEntry("lines.bends", 2.0);
    }

    /** A print cannot better its figures by telling another course than it draws. */
    @Test
    void aLineRunsWhereThePrintSaysSo() {
        assertThat(kinds(c -> Marked.line(
                        c,
                        "L-1",
                        Sheet.course(20, 100, 280, 100),
                        k -> k.lines(20, 100, 150, 100, 150, 150, 280, 150))))
                .containsExactly("line-astray");
        assertThat(kinds(c -> Marked.line(c, "L-1", Sheet.course(20, 100, 280, 100), k -> k.lines(20, 100, 200, 100))))
                .containsExactly("line-astray");
    }
}
