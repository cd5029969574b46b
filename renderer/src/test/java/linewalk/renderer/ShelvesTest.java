package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** How cuttings are set on pages. */
class ShelvesTest {

    /** Three parts in a row or a column, none so far from the next that the stretch between is left out. */
    private static BrokenView view(boolean level) {
        Bench bench = new Bench();
        for (int i = 0; i < 3; i++) {
            double at = 100 + i * 150;
            Component c = level
                    ? bench.part(1, "V" + i, Kind.FILTER, at, 100, "A@" + (at - 25) + ",100", "B@" + (at + 25) + ",100")
                    : bench.part(1, "V" + i, Kind.FILTER, 100, at, "A@100," + (at - 25), "B@100," + (at + 25));
            if (i > 0) {
                bench.along(
                        1,
                        null,
                        c.ports().get(0).place().plus(level ? -100 : 0, level ? 0 : -100),
                        c.ports().get(0).place());
            }
            bench.through(c, i == 0 ? null : "A", i == 2 ? null : "B", null);
        }
        PrintJob job = bench.job();
        return BrokenView.of(Stay.of(job.trace().legs()).get(0), job.set().getSheet(Bench.page(1)), List.of());
    }

    private static List<Panel> set(double widthPt, double heightPt, boolean... level) {
        return set(true, widthPt, heightPt, level);
    }

    private static List<Panel> set(boolean inOrder, double widthPt, double heightPt, boolean... level) {
        Rectangle2D area = new Rectangle2D.Double(0, 0, widthPt, heightPt);
        List<BrokenView> views = new ArrayList<>();
        List<String> captions = new ArrayList<>();
        for (boolean l : level) {
            views.add(view(l));
            captions.add(views.size() + ".");
        }
        return Shelves.set(views, captions, new PrintAreas(area, area, 9), inOrder);
    }

    @Test
    void bothWholeOnOnePageWhereThereIsRoom() {
        assertThat(set(600, 600, true, true)).hasSize(2).allSatisfy(p -> assertThat(p.page())
                .isZero());
    }

    @Test
    void oneThatDoesNotFitIsDividedRatherThanSentToAnotherPage() {
        // a column on the left, and beside it less room than the row is long
        List<Panel> panels = set(560, 590, false, true);
        assertThat(panels).hasSize(3).allSatisfy(p -> assertThat(p.page()).isZero());
        assertThat(panels.get(1).caption().lines()).containsExactly("2. (part 1 of 2)");
    }

    @Test
    void oneThatWouldFallToPiecesGoesToTheNextPageWhole() {
        List<Panel> panels = set(505, 590, false, true);
        assertThat(panels).hasSize(2).extracting(Panel::page).containsExactly(0, 1);
    }

    @Test
    void noTwoCuttingsLieOneOverTheOther() {
        List<Panel> panels = set(560, 590, false, true);
        for (Panel p : panels) {
            assertThat(panels.stream()
                            .filter(o -> o.page() == p.page() && o.frame().intersects(p.frame())))
                    .containsExactly(p);
        }
    }

    @Test
    void aCircuitsCuttingsFillWhatPagesBeforeHaveLeft() {
        // two columns stand side by side; the row between them does not fit beside one
        assertThat(set(false, 505, 590, false, true, false))
                .extracting(p -> p.stay() + " on " + p.page())
                .containsExactly("0 on 0", "2 on 0", "1 on 1");
        assertThat(set(true, 505, 590, false, true, false))
                .extracting(p -> p.stay() + " on " + p.page())
                .startsWith("0 on 0", "1 on 1")
                .doesNotContain("2 on 0");
    }
}
