package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Point;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Marks;
import org.junit.jupiter.api.Test;

/** Old plotters fill areas stroke by stroke; what no paper shows between is filled. */
class HatchingTest {

    private static Fill only(Drawn d) {
        Marks marks = d.marks();
        assertThat(marks.strokes()).isEmpty();
        assertThat(marks.fills()).hasSize(1);
        return marks.fills().get(0);
    }

    /** An arrow head with its tip at 300, 200, hatched across its axis. */
    private static Drawn head(double apartPt) {
        Drawn d = Drawn.page().pen(0.6);
        for (double y = 0; y < 8; y += apartPt) {
            d.line(300 - 0.1 - y / 3, 200 + y, 300 + 0.1 + y / 3, 200 + y);
        }
        return d;
    }

    @Test
    void anArrowHeadHasThreeCorners() {
        Fill f = only(head(0.55));

        assertThat(f.outline()).hasSize(3);
        assertThat(f.outline()).anyMatch(p -> p.distancePt(new Point(300, 200)) < 0.5);
    }

    @Test
    void aDotIsRound() {
        Drawn d = Drawn.page().pen(0.6);
        for (double y = -2; y <= 2; y += 0.5) {
            double x = Math.sqrt(2.25 * 2.25 - y * y);
            d.line(300 - x, 200 + y, 300 + x, 200 + y);
        }
        assertThat(only(d).isDot(0.8)).isTrue();
    }

    @Test
    void aWideLineIsABar() {
        Drawn d = Drawn.page().pen(0.6);
        for (int i = 0; i < 4; i++) {
            d.line(100, 200 + i * 0.55, 400, 200 + i * 0.55);
        }
        assertThat(only(d).outline()).hasSize(4);
    }

    @Test
    void withPaperBetweenTheyAreLines() {
        assertThat(head(1.2).marks().fills()).isEmpty();
    }

    /** Shorter than the pen is wide, one after the other. */
    @Test
    void thePiecesOfASmallRingAreNoArea() {
        Drawn d = Drawn.page().pen(1);
        for (int i = 0; i < 24; i++) {
            double a = Math.PI * i / 12;
            double b = Math.PI * (i + 1) / 12;
            d.line(300 + 3 * Math.cos(a), 200 + 3 * Math.sin(a), 300 + 3 * Math.cos(b), 200 + 3 * Math.sin(b));
        }
        assertThat(d.marks().fills()).isEmpty();
    }
}
