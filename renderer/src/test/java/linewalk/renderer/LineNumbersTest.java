package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Flow;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import org.junit.jupiter.api.Test;

/** A number that stands at a reference may be of the branch that leads there: it is not told of the whole line. */
class LineNumbersTest {

    private static final Point HERE = new Point(10, 10);

    /** @param ends labels of references at the line, or "part" */
    private static String number(String label, String... ends) {
        List<End> all = Stream.of(ends)
                .map(e -> e.equals("part") ? new End.AtPort("V1", "V1:A", HERE) : new End.AtReference(e, HERE))
                .map(End.class::cast)
                .toList();
        Line line = new Line("l", Bench.page(1), LineKind.WORKING, label, null, 1, all, List.of());
        List<Reference> references = Stream.of(ends)
                .filter(e -> !e.equals("part"))
                .map(LineNumbersTest::reference)
                .toList();
        DrawingSet set = new DrawingSet(List.of(), references, List.of(), List.of(), List.of(line), List.of());
        return new SetIndex(set).number(line);
    }

    private static Reference reference(String label) {
        return new Reference(
                label,
                Bench.page(1),
                HERE,
                new Box(0, 0, 1, 1),
                null,
                "2.C1",
                List.of(),
                label,
                Flow.UNKNOWN,
                Origin.TEXT,
                1,
                List.of(),
                1);
    }

    @Test
    void aLineWithTwoEndsHasTheNumberAtItsReference() {
        assertThat(number("L-7", "part", "L-7")).isEqualTo("L-7");
    }

    @Test
    void aLineThatDividesHasNot() {
        assertThat(number("L-7", "part", "part", "L-7")).isNull();
    }

    @Test
    void anotherNumberThanThoseAtItsReferencesIsItsOwn() {
        assertThat(number("L-1", "part", "part", "L-7")).isEqualTo("L-1");
    }
}
