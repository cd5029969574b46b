package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Net;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import org.junit.jupiter.api.Test;

/** Of two lines that cross, the one that is drawn later interrupts the other; ends that meet are no crossing. */
class LineCrossingsTest {

    private static Layout.Course line(String net, double x0, double y0, double x1, double y1) {
        return new Layout.Course(
                new Net(net, 0.5, List.of()),
                null,
                null,
                List.of(new Point2D.Double(x0, y0), new Point2D.Double(x1, y1)));
    }

    /** The picture of a black line along y = 50 after a second one was prepared for. */
    private static BufferedImage opened(Layout.Course first, Layout.Course second) {
        LineCrossings crossings =
                new LineCrossings(new Layout(100, 100, Map.of(), List.of(first, second), List.of()), c -> 2, c -> 2);
        BufferedImage page = new BufferedImage(100, 100, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = page.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 100, 100);
        Canvas c = new Canvas(g);
        c.pen(Color.BLACK, Ink.line(2));
        c.polyline(first.points());
        crossings.open(c, second);
        return page;
    }

    private static boolean inked(BufferedImage page, int x) {
        return page.getRGB(x, 50) != Color.WHITE.getRGB();
    }

    @Test
    void theLaterLineHasRoomOnBothSides() {
        BufferedImage page = opened(line("A", -100, 50, 200, 50), line("B", 60, 0, 60, 100));
        assertThat(inked(page, 60)).isFalse();
        assertThat(inked(page, 57)).isFalse();
        assertThat(inked(page, 62)).isFalse();
        assertThat(inked(page, 54)).isTrue();
        assertThat(inked(page, 66)).isTrue();
    }

    @Test
    void theShorterStretchStaysWhole() {
        Layout.Course across = line("A", 0, 50, 100, 50);
        Layout.Course stub = line("B", 60, 40, 60, 100);
        Layout layout = new Layout(100, 100, Map.of(), List.of(stub, across), List.of());
        assertThat(new LineCrossings(layout, c -> 2, c -> 2).order()).containsExactly(across, stub);
    }

    @Test
    void aLineThatEndsOnAnotherLeavesItWhole() {
        assertThat(inked(opened(line("A", 0, 50, 100, 50), line("B", 60, 0, 60, 50)), 60))
                .isTrue();
    }

    @Test
    void marksOfPatternsKeepClear() {
        LineCrossings crossings = new LineCrossings(
                new Layout(
                        100, 100, Map.of(), List.of(line("A", 0, 50, 100, 50), line("B", 60, 0, 60, 100)), List.of()),
                c -> 2,
                c -> 2);
        assertThat(crossings.isFree(new Point2D.Double(64, 50), 6)).isFalse();
        assertThat(crossings.isFree(new Point2D.Double(80, 50), 6)).isTrue();
    }
}
