package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.importer.scan.Piece.Joint;
import org.junit.jupiter.api.Test;

/** Two lines that cross at a slant meet in one place, however thinning left it. */
class KnotsTest {

    private final List<Piece> pieces = new ArrayList<>();
    private final Map<Piece, Line> lineOf = new HashMap<>();

    private final Joint upper = new Joint(100, 102, 5);
    private final Joint lower = new Joint(100, 98, 5);

    private Piece piece(Joint a, Joint b) {
        double[] xs = new double[20];
        double[] ys = new double[20];
        for (int i = 0; i < 20; i++) {
            xs[i] = a.x + i * (b.x - a.x) / 19;
            ys[i] = a.y + i * (b.y - a.y) / 19;
        }
        Piece p = new Piece(xs, ys, Straight.through(xs, ys, 0, 19), null);
        p.tie(a, b);
        pieces.add(p);
        return p;
    }

    private void line(Piece... of) {
        Line l = new Line();
        l.pieces.addAll(List.of(of));
        l.fit();
        l.pieces.forEach(p -> lineOf.put(p, l));
    }

    @Test
    void bothBranchingsLieWhereTheLinesCross() {
        line(piece(new Joint(50, 0, 5), upper), piece(lower, new Joint(150, 200, 5)));
        line(piece(new Joint(150, 0, 5), upper), piece(lower, new Joint(50, 200, 5)));
        line(piece(upper, lower));
        Knots.tie(pieces, lineOf);
        assertThat(upper.x).isCloseTo(100, within(0.5));
        assertThat(upper.y).isCloseTo(100, within(0.5)).isEqualTo(lower.y);
        assertThat(upper.x).isEqualTo(lower.x);
    }

    @Test
    void linesThatEndThereStayWhereTheyEnd() {
        line(piece(new Joint(50, 0, 5), upper));
        line(piece(new Joint(150, 0, 5), upper));
        line(piece(lower, new Joint(150, 200, 5)));
        line(piece(lower, new Joint(50, 200, 5)));
        line(piece(upper, lower));
        Knots.tie(pieces, lineOf);
        assertThat(upper.y).isEqualTo(102);
        assertThat(lower.y).isEqualTo(98);
    }
}
