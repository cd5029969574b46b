package linewalk.renderer.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Origin;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import org.junit.jupiter.api.Test;

/** What a part joins at rest is drawn inside it; what it joins when shifted is not. */
class PassageOverlayTest {

    private final OverlayBench bench = new OverlayBench().sheet(OverlayBench.UPRIGHT);

    private long drawn(String by) {
        List<Port> ports = List.of(new Port("a", "A", new Point(200, 200)), new Port("b", "B", new Point(260, 200)));
        Position position = new Position(List.of(by), null, List.of(new Passage("a", "b", true, false, null)));
        bench.parts.add(new Component(
                "1V1",
                "1V1",
                OverlayBench.page(1),
                new Point(230, 200),
                new Box(200, 180, 260, 220),
                Kind.CHECK_VALVE,
                null,
                Origin.TEXT,
                1,
                ports,
                List.of(position)));
        return OverlayBench.pixels(OverlayBench.picture(bench.print(), 2, 2), c -> OverlayBench.near(c, Tint.PASSAGE))
                .size();
    }

    @Test
    void atRest() {
        assertThat(drawn("rest")).isGreaterThan(50);
    }

    @Test
    void notShifted() {
        assertThat(drawn("Y1A")).isZero();
    }
}
