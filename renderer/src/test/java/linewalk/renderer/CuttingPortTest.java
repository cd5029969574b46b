package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** The side on which a crossing leaves its cutting. */
class CuttingPortTest {

    private static CuttingPort exit(double referenceX, double referenceY) {
        Bench bench = new Bench();
        Component pump = bench.part(1, "P1", Kind.PUMP, 200, 400, "P@200,375");
        bench.through(pump, null, "P", null);
        bench.along(1, null, Bench.at(200, 375), Bench.at(200, 100), Bench.at(600, 100));
        bench.across(bench.reference(1, "2.C1", referenceX, referenceY, 1), bench.reference(2, "1.A4", 60, 400, 1));
        bench.along(2, null, Bench.at(82, 400), Bench.at(300, 400));
        PrintJob job = bench.job();
        List<Stay> stays = Stay.of(job.trace().legs());
        BrokenView view = BrokenView.of(stays.get(0), job.set().getSheet(Bench.page(1)), List.of());
        var area = new java.awt.geom.Rectangle2D.Double(0, 0, 1000, 700);
        return Shelves.set(List.of(view), List.of("1. Sheet 1"), new PrintAreas(area, area, 9), true)
                .get(0)
                .exit();
    }

    @Test
    void isAheadOfTheLine() {
        assertThat(exit(622, 100).edge()).isEqualTo(CuttingPort.Edge.RIGHT);
    }

    @Test
    void isAheadOfTheLineEvenWhereTheLetteringStandsAboveItsEnd() {
        assertThat(exit(590, 86).edge()).isEqualTo(CuttingPort.Edge.RIGHT);
    }
}
