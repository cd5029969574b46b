package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** Stops in columns, lines in the lanes between them. */
class ColumnLayoutTest {

    private static final Rectangle2D AREA = new Rectangle2D.Double(26, 26, 754, 714);
    private static final PrintAreas AREAS = new PrintAreas(AREA, AREA, 9);

    private static ColumnLayout layout(Bench bench) {
        PrintJob job = bench.job();
        FlowGraph graph = new FlowGraph(job);
        List<StopFigure> figures = new ArrayList<>();
        graph.stops.forEach(s -> figures.add(new StopFigure(s, job, Doubts.of(job))));
        return new ColumnLayout(figures, graph.edges, AREAS);
    }

    private static Bench chain(int parts) {
        Bench bench = new Bench();
        for (int i = 0; i < parts; i++) {
            Component c = bench.part(1, "F" + i, Kind.FILTER, 50, 40, "A@50,20", "B@50,60");
            bench.through(c, i == 0 ? null : "A", i == parts - 1 ? null : "B", null);
            if (i < parts - 1) {
                bench.along(1, null, Bench.at(50, 60), Bench.at(50, 20));
            }
        }
        return bench;
    }

    @Test
    void aShortWalkRunsStraightDown() {
        ColumnLayout l = layout(chain(4));
        assertThat(l.pages()).isEqualTo(1);
        assertThat(l.lines.values()).hasSize(3).allSatisfy(d -> {
            assertThat(d.course()).hasSize(2);
            assertThat(d.course().get(0).getX()).isEqualTo(d.course().get(1).getX());
            assertThat(d.course().get(0).getY()).isLessThan(d.course().get(1).getY());
        });
    }

    @Test
    void twoDozenStopsFitOnePage() {
        ColumnLayout l = layout(chain(24));
        assertThat(l.pages()).isEqualTo(1);
        assertThat(l.cuts).isEmpty();
    }

    @Test
    void aWalkThatComesBackToAValveIsLedToItByLinesNotByASecondSymbol() {
        ColumnLayout l = layout(new Bench().roundTrip());
        assertThat(l.boxes.keySet().stream()
                        .filter(f -> f.stop.part != null && f.stop.part.tag().equals("1V1")))
                .hasSize(1);
        assertThat(l.cuts).isEmpty();
    }

    @Test
    void figuresKeepApartAndNoLineRunsThroughOne() {
        ColumnLayout l = layout(new Bench().roundTrip());
        List<Rectangle2D> boxes =
                l.boxes.values().stream().map(ColumnPacking.Placed::box).toList();
        for (Rectangle2D b : boxes) {
            assertThat(AREA.contains(b)).isTrue();
            assertThat(boxes.stream().filter(b::intersects)).hasSize(1);
            Rectangle2D inside =
                    new Rectangle2D.Double(b.getX() + 1, b.getY() + 1, b.getWidth() - 2, b.getHeight() - 2);
            assertThat(l.lines.values()).noneMatch(d -> passes(d.course(), inside));
        }
    }

    @Test
    void anEdgeToTheNextPageHasAStubOnEach() {
        ColumnLayout l = layout(chain(60));
        assertThat(l.pages()).isEqualTo(2);
        assertThat(l.cuts).hasSize(1);
        assertThat(l.cuts.values().iterator().next())
                .extracting(ColumnLayout.Stub::page)
                .containsExactly(0, 1);
    }

    private static boolean passes(List<Point2D> line, Rectangle2D box) {
        for (int i = 1; i < line.size(); i++) {
            if (box.intersectsLine(
                    line.get(i - 1).getX(), line.get(i - 1).getY(),
                    line.get(i).getX(), line.get(i).getY())) {
                return true;
            }
        }
        return false;
    }
}
