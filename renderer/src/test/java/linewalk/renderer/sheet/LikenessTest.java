package linewalk.renderer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** The measure itself: what two programs do differently is borne, what one leaves out is told. */
class LikenessTest {

    private static final BufferedImage DRAWN = drawn(c -> {}, 0);

    private static BufferedImage drawn(Consumer<Canvas> more, double shiftDots) {
        BufferedImage image = new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setBackground(Color.WHITE);
        g.clearRect(0, 0, 600, 400);
        g.translate(shiftDots, shiftDots);
        Canvas c = new Canvas(g);
        c.pen(Ink.BLACK, Ink.line(2));
        for (int y = 40; y < 400; y += 20) {
            c.line(20, y, 580, y);
        }
        more.accept(c);
        g.dispose();
        return image;
    }

    @Test
    void bearsHalfADot() {
        Likeness likeness = Likeness.of(DRAWN, drawn(c -> {}, 0.5));
        assertThat(likeness.strokes()).isZero();
        assertThat(likeness.patch()).isLessThan(15);
    }

    @Test
    void tellsAStrokeThatOneLacks() {
        BufferedImage more = drawn(c -> c.line(300, 30, 300, 39), 0);
        assertThat(Likeness.of(DRAWN, more).strokes()).isPositive();
        assertThat(Likeness.of(more, DRAWN).strokes()).isPositive();
    }

    @Test
    void tellsAPaleFillThatOneLacks() {
        BufferedImage more = drawn(c -> c.fill(Ink.OVERLAY, Canvas.disc(300, 200, 20)), 0);
        assertThat(Likeness.of(DRAWN, more).patch()).isGreaterThan(40);
    }
}
