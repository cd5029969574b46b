package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.importer.scan.Piece.Joint;
import org.junit.jupiter.api.Test;

/** What thinning leaves inside a filled shape says nothing, but for the end of a line that leads into it. */
class SolidTest {

    /** Pointing right, its base askew: a line meets it there. */
    private static final Solid HEAD =
            new Solid(List.of(new double[] {60, 50}, new double[] {18, 63}, new double[] {25, 38}), false);

    private final Joint middle = new Joint(22, 50, 6);

    private static Piece piece(Joint a, Joint b) {
        double[] xs = new double[20];
        double[] ys = new double[20];
        for (int i = 0; i < 20; i++) {
            xs[i] = a.x + i * (b.x - a.x) / 19;
            ys[i] = a.y + i * (b.y - a.y) / 19;
        }
        Piece p = new Piece(xs, ys, Straight.through(xs, ys, 0, 19), null);
        p.tie(a, b);
        return p;
    }

    @Test
    void theEndOfALineStays() {
        piece(new Joint(0, 50, 5), middle);
        assertThat(HEAD.swallows(piece(middle, new Joint(58, 50, 5)))).isFalse();
    }

    @Test
    void theMiddleLineOfTheShapeGoes() {
        assertThat(HEAD.swallows(piece(middle, new Joint(58, 50, 5)))).isTrue();
    }

    @Test
    void soItDoesWhereALineComesFromAside() {
        piece(new Joint(22, 0, 5), middle);
        assertThat(HEAD.swallows(piece(middle, new Joint(58, 50, 5)))).isTrue();
    }
}
