package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Finding;
import linewalk.drawing.HandTag;
import linewalk.drawing.Kind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Rule;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** A valve whose squares were not read is a finding until a hand tag tells what it joins. */
class UnreadPositionTest {

    private static final PageKey PAGE = new PageKey("set.pdf", 1);
    private static final Point PLACE = new Point(100, 100);

    private static List<Finding> findings(List<HandTag> tags) {
        List<Port> ports = List.of(new Port("p", "P", PLACE), new Port("t", "T", PLACE));
        Component valve = new Component(
                "v",
                "V1",
                PAGE,
                PLACE,
                Box.around(PLACE).grow(10),
                Kind.DIRECTIONAL_VALVE,
                null,
                Origin.TEXT,
                0.95,
                ports,
                List.of());
        Finding doubt = new Finding(
                Rule.DOUBTFUL_READING,
                PAGE,
                PLACE,
                List.of(),
                List.of("V1"),
                "squares not read",
                "tell them with tags");
        SheetReading reading = new SheetReading(
                PAGE,
                400,
                400,
                Affine.IDENTITY,
                List.of(),
                null,
                null,
                null,
                null,
                null,
                List.of(),
                List.of(valve),
                List.of(),
                List.of(),
                List.of(doubt));
        return Linker.link(
                        List.of(reading),
                        tags,
                        new SetSettings(List.of("set.pdf"), null, null),
                        List.of(),
                        new CycleChart(List.of(), List.of()))
                .findings()
                .stream()
                .filter(f -> f.rule() == Rule.DOUBTFUL_READING)
                .toList();
    }

    @Test
    void itIsAFinding() {
        assertThat(findings(List.of())).hasSize(1);
    }

    @Test
    void aPositionTagSettlesIt() {
        assertThat(findings(List.of(new HandTag.OfPosition("v1", "rest", null, "P-T"))))
                .isEmpty();
        assertThat(findings(List.of(new HandTag.OfPosition("V2", "rest", null, "P-T"))))
                .hasSize(1);
    }
}
