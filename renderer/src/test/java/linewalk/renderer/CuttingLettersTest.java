package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** Letters at the edges of divided cuttings. */
class CuttingLettersTest {

    private static final PrintAreas LOW = areas(460, 300);

    private static PrintAreas areas(double widthPt, double heightPt) {
        Rectangle2D page = new Rectangle2D.Double(0, 0, widthPt, heightPt);
        return new PrintAreas(page, page, 9);
    }

    /** On each of two sheets a line with a bend, too long for one cutting on a low page. */
    private static PrintJob twoSheets() {
        Bench bench = new Bench();
        for (int sheet = 1; sheet <= 2; sheet++) {
            Component a = bench.part(sheet, "V" + sheet, Kind.CHECK_VALVE, 100, 100, "A@100,75", "B@100,125");
            Component b = bench.part(sheet, "V" + (sheet + 2), Kind.CHECK_VALVE, 700, 500, "A@675,500", "B@725,500");
            bench.through(a, sheet == 1 ? null : "A", "B", null);
            bench.along(sheet, null, Bench.at(100, 125), Bench.at(100, 500), Bench.at(675, 500));
            bench.through(b, "A", sheet == 1 ? "B" : null, null);
        }
        return Circuits.whole(bench.job());
    }

    private static List<Panel> panels(PrintJob job, PrintAreas areas) {
        List<BrokenView> views = new ArrayList<>();
        List<String> captions = new ArrayList<>();
        for (Stay s : Stay.of(job.subject().excerpt(), job.set())) {
            views.add(BrokenView.of(s, job.set().getSheet(s.page()), List.of()));
            captions.add("Sheet");
        }
        return Shelves.set(views, captions, areas, true);
    }

    @Test
    void noLetterStandsForLinesOfTwoSheets() {
        List<Panel> panels = panels(twoSheets(), LOW);
        PanelCuts cuts = new PanelCuts(panels, new MatchMarks());
        Map<String, Integer> sheets = new HashMap<>();
        for (Panel p : panels) {
            for (PanelCuts.Mark m : cuts.on(p)) {
                assertThat(sheets.merge(m.letter(), p.stay(), (a, b) -> a.equals(b) ? a : -1))
                        .isNotNegative();
            }
        }
        assertThat(sheets.values()).contains(0, 1);
    }

    /** On large sheets and pages of many widths, where parts come to stand side by side. */
    @Test
    void lettersOfPartsSideBySideKeepApart() throws IOException {
        assumeTrue(StageLift.folder() != null, "skipped: shared/drawings/set-d is missing");
        PrintJob job = Circuits.whole(StageLift.load().job(0, Look.CUTTINGS, Paper.A3));
        int beside = 0;
        for (double width = 700; width <= 1200; width += 50) {
            List<Panel> panels = panels(job, areas(width, 640));
            PanelCuts cuts = new PanelCuts(panels, new MatchMarks());
            Map<Integer, List<Rectangle2D>> earlier = new HashMap<>();
            for (Panel p : panels) {
                List<Rectangle2D> boxes = earlier.computeIfAbsent(p.page(), k -> new ArrayList<>());
                List<Rectangle2D> own = cuts.on(p).stream()
                        .filter(m -> CuttingPainter.isBeside(p, m))
                        .map(m -> MatchMarks.box(CuttingPainter.markAt(p, m), true))
                        .toList();
                assertThat(own).noneMatch(o -> boxes.stream().anyMatch(o::intersects));
                boxes.addAll(own);
                beside += own.size();
            }
        }
        assertThat(beside).isPositive();
    }

    @Test
    void whatGoesOnOnTheSamePageSaysHere() {
        assertThat(MatchMarks.where(3, 3)).isEqualTo("here");
        assertThat(MatchMarks.where(3, 4)).isEqualTo("page 5");
    }
}
