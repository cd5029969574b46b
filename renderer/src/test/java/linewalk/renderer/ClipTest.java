package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A course cut to a rectangle. */
class ClipTest {

    private static final Rectangle2D BOX = new Rectangle2D.Double(0, 0, 100, 100);

    private static Point2D at(double x, double y) {
        return new Point2D.Double(x, y);
    }

    @Test
    void insideIsOnePieceWithoutCuts() {
        Clip clip = new Clip(List.of(at(10, 10), at(50, 10), at(50, 90)), BOX);
        assertThat(clip.pieces).containsExactly(List.of(at(10, 10), at(50, 10), at(50, 90)));
        assertThat(clip.cuts).isEmpty();
    }

    @Test
    void tellsWhereItLeavesAndComesBack() {
        Clip clip = new Clip(List.of(at(50, 50), at(50, 150), at(80, 150), at(80, 50)), BOX);
        assertThat(clip.pieces).hasSize(2);
        assertThat(clip.cuts)
                .containsExactly(new Clip.Cut(at(50, 100), 50, true), new Clip.Cut(at(80, 100), 180, false));
    }

    @Test
    void noticesAnEdgeMetExactlyAtABend() {
        Clip clip = new Clip(List.of(at(50, 50), at(50, 100), at(50, 150)), BOX);
        assertThat(clip.pieces).hasSize(1);
        assertThat(clip.cuts).containsExactly(new Clip.Cut(at(50, 100), 50, true));
    }
}
