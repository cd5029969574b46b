package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Room for a balloon beside a part. */
class NotesTest {

    private static final Rectangle2D FRAME = new Rectangle2D.Double(0, 0, 300, 200);
    private static final Rectangle2D PART = new Rectangle2D.Double(100, 80, 100, 40);

    private static Rectangle2D placed(List<Rectangle2D> lettering, List<Line2D> ink) {
        Notes notes = new Notes(FRAME, lettering, List.of(), ink, Margins.none());
        notes.keepOff(PART);
        Point2D at = notes.place(PART, 20, 20);
        return new Rectangle2D.Double(at.getX() - 10, at.getY() - 10, 20, 20);
    }

    @Test
    void liesCloseToThePartAndNotOverIt() {
        Rectangle2D note = placed(List.of(), List.of());
        assertThat(note.intersects(PART)).isFalse();
        assertThat(FRAME.contains(note)).isTrue();
    }

    @Test
    void keepsOffLetteringAndStrokes() {
        Rectangle2D words = new Rectangle2D.Double(60, 30, 200, 45);
        Line2D spring = new Line2D.Double(200, 100, 290, 100);
        Line2D leader = new Line2D.Double(10, 100, 100, 100);
        Rectangle2D note = placed(List.of(words), List.of(spring, leader));
        assertThat(note.intersects(PART)).isFalse();
        assertThat(note.intersects(words)).isFalse();
        assertThat(spring.intersects(note)).isFalse();
        assertThat(leader.intersects(note)).isFalse();
    }

    @Test
    void standsBeyondTheFrameRatherThanOnThePathWhereThePageHasRoom() {
        Rectangle2D strip = new Rectangle2D.Double(0, 0, 100, 24);
        Rectangle2D flag = new Rectangle2D.Double(60, 4, 36, 16);
        List<List<Point2D>> path = List.of(List.of(new Point2D.Double(0, 12), new Point2D.Double(60, 12)));
        Rectangle2D page = new Rectangle2D.Double(-60, -60, 300, 300);
        Rectangle2D next = new Rectangle2D.Double(0, -60, 200, 55);

        Rectangle2D note = beside(flag, strip, path, new Margins(page, List.of(strip, next)));
        assertThat(note.intersectsLine(0, 12, 60, 12)).isFalse();
        assertThat(note.intersects(flag)).isFalse();
        assertThat(note.intersects(next)).isFalse();
        assertThat(beside(flag, strip, path, Margins.none()).intersectsLine(0, 12, 60, 12))
                .isTrue();
    }

    private static Rectangle2D beside(Rectangle2D flag, Rectangle2D frame, List<List<Point2D>> path, Margins margins) {
        Point2D at = new Notes(frame, List.of(), path, List.of(), margins).place(flag, 19, 19);
        return new Rectangle2D.Double(at.getX() - 9.5, at.getY() - 9.5, 19, 19);
    }
}
