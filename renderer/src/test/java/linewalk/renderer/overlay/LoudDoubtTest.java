package linewalk.renderer.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import linewalk.renderer.sheet.Ink;
import org.junit.jupiter.api.Test;

/** Below 0.9 nothing is promised, and that is seen: dark violet dashes. */
class LoudDoubtTest {

    private final OverlayBench bench = new OverlayBench().sheet(OverlayBench.UPRIGHT);

    private List<Point> violet() {
        // the caption at an edge is lettered in the same colour
        return OverlayBench.pixels(OverlayBench.picture(bench.print(), 2, 2), c -> OverlayBench.near(c, Ink.DOUBT))
                .stream()
                .filter(p -> p.yPt() > 100 && p.yPt() < 700)
                .toList();
    }

    @Test
    void ofALine() {
        bench.line(0.89, new Point(100, 200), new Point(400, 200));
        List<Point> dashes = violet();
        assertThat(dashes).anyMatch(p -> Math.abs(p.yPt() - 400) < 2);
        assertThat(dashes.stream()
                        .map(p -> Math.round(p.xPt()))
                        .filter(x -> x > 220 && x < 780)
                        .distinct())
                .as("columns covered: dashes, with gaps between")
                .hasSizeBetween(150, 450);
    }

    @Test
    void ofAPart() {
        bench.part("0V1", Kind.CHECK_VALVE, 300, 200, 0.89);
        assertThat(violet()).hasSizeGreaterThan(40);
    }

    @Test
    void ofAMate() {
        bench.reference(1, "a", "S1", List.of("a"), 0.89);
        assertThat(violet()).hasSizeGreaterThan(40);
    }

    @Test
    void ofNothingElse() {
        bench.line(0.9, new Point(100, 200), new Point(400, 200));
        bench.part("0V1", Kind.CHECK_VALVE, 300, 100, 0.9);
        bench.reference(1, "a", "S1", List.of("a"), 0.9);
        assertThat(violet()).isEmpty();
    }
}
