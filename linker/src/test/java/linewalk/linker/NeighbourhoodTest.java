package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Flow;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;
import org.junit.jupiter.api.Test;

/** Pump - reference ~ reference - check valve - accumulator, on two sheets: joins are followed, flow is not asked. */
class NeighbourhoodTest {

    private static final Point PLACE = new Point(10, 10);

    private final Component pump = part("P1", 1, Kind.PUMP, "P");
    private final Component check = part("V1", 2, Kind.CHECK_VALVE, "1", "2");
    private final Component accumulator = part("Z1", 2, Kind.ACCUMULATOR, "P");
    private final Line first = line("a", 1, port("P1", "P"), new End.AtReference("out", PLACE));
    private final Line second = line("b", 2, new End.AtReference("in", PLACE), port("V1", "2"));
    private final Line third = line("c", 2, port("V1", "1"), port("Z1", "P"));
    private final Neighbourhood neighbourhood = new Neighbourhood(new DrawingSet(
            List.of(),
            List.of(reference("out", 1, "in"), reference("in", 2, "out")),
            List.of(pump, check, accumulator),
            List.of(),
            List.of(first, second, third),
            List.of()));

    private static Component part(String tag, int page, Kind kind, String... ports) {
        List<Port> made = java.util.Arrays.stream(ports)
                .map(p -> new Port(tag + ":" + p, p, PLACE))
                .toList();
        return new Component(
                tag,
                tag,
                new PageKey("n.pdf", page),
                PLACE,
                Box.around(PLACE),
                kind,
                null,
                Origin.TEXT,
                1,
                made,
                List.of());
    }

    private static End port(String part, String name) {
        return new End.AtPort(part, part + ":" + name, PLACE);
    }

    private static Line line(String id, int page, End from, End to) {
        return new Line(id, new PageKey("n.pdf", page), LineKind.WORKING, null, null, 1, List.of(from, to), List.of());
    }

    private static Reference reference(String id, int page, String mate) {
        return new Reference(
                id,
                new PageKey("n.pdf", page),
                PLACE,
                Box.around(PLACE),
                null,
                id,
                List.of(),
                null,
                Flow.UNKNOWN,
                Origin.TEXT,
                1,
                List.of(mate),
                0.5);
    }

    private static Set<String> tags(Neighbourhood.Reached reached) {
        return reached.parts().stream().map(Component::tag).collect(Collectors.toSet());
    }

    @Test
    void linesAndDoubtfulMatesAreFollowed() {
        assertThat(tags(neighbourhood.from(List.of(first), c -> false))).containsExactlyInAnyOrder("P1", "V1");
    }

    @Test
    void partsArePassedAgainstTheirFlowWhereAskedFor() {
        assertThat(tags(neighbourhood.from(List.of(first), c -> c.kind() == Kind.CHECK_VALVE)))
                .containsExactlyInAnyOrder("P1", "V1", "Z1");
        assertThat(neighbourhood.from(List.of(third), c -> true).lines())
                .containsExactlyInAnyOrder(first, second, third);
    }

    @Test
    void linesAtAPartAreItsOwn() {
        assertThat(neighbourhood.linesAt(check)).containsExactlyInAnyOrder(second, third);
    }
}
