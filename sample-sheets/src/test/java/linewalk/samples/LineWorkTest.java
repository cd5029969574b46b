package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.geom.Line2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import linewalk.samples.machine.Run;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.symbol.Spot;
import org.junit.jupiter.api.Test;

/** Lines are written into the file as the style says. */
class LineWorkTest {
    @Test
    void whereLinesCrossOneHops() throws IOException {
        int crossings = 0;
        for (DrawnSheet sheet : demo(DraftingStyle.HOPS).sheets()) {
            for (Spot at : crossings(sheet)) {
                long through = sheet.strokes().stream()
                        .filter(stroke -> distance(stroke, at) < 0.5)
                        .count();
                assertThat(through)
                        .as("sheet " + sheet.plan().number() + " " + at)
                        .isEqualTo(1);
                crossings++;
            }
        }
        assertThat(crossings).isGreaterThan(10);
    }

    @Test
    void joinsWithHopsHaveNoDots() throws IOException {
        assertThat(PaintedPath.of(demo(DraftingStyle.HOPS))).noneMatch(path -> path.filled() && path.curved() > 0);
        assertThat(PaintedPath.of(demo(DraftingStyle.HOUSE))).anyMatch(path -> path.filled() && path.curved() > 0);
    }

    @Test
    void anExplodedDrawingHasOnlySinglePiecesWithoutDashes() throws IOException {
        List<PaintedPath> strokes = PaintedPath.of(demo(DraftingStyle.PIECES)).stream()
                .filter(path -> !path.filled())
                .toList();
        assertThat(strokes).allMatch(path -> path.straight() + path.curved() == 1 && !path.dashed());
        assertThat(strokes.size()).isGreaterThan(5_000);
        assertThat(strokes).anyMatch(path -> path.curved() == 1);
    }

    @Test
    void barsAreFilledAndSomeRunObliquely() throws IOException {
        List<PaintedPath> paths = PaintedPath.of(demo(DraftingStyle.BARS));
        double workingPt = DraftingStyle.BARS.lineWidthMm() * 72 / 25.4;
        assertThat(paths).noneMatch(path -> !path.filled() && Math.abs(path.width() - workingPt) < 0.01);
        assertThat(paths.stream().filter(path -> path.rectangles() == 1).count())
                .isGreaterThan(1000);
        Set<Long> slopes = new TreeSet<>();
        paths.stream()
                .filter(path -> path.filled() && path.points().size() == 4)
                .forEach(path -> slopes.add(slope(path.points())));
        assertThat(slopes).contains(45L).hasSizeGreaterThan(2);
    }

    @Test
    void theDenseSheetHasTwentyFiveValves() {
        Map<Integer, Long> valves = demo(DraftingStyle.BARS).list("components").stream()
                .filter(part -> part.get("kind").asText().matches(".*valve|flow-control"))
                .collect(Collectors.groupingBy(part -> part.get("page").asInt(), Collectors.counting()));
        assertThat(valves).containsEntry(DraftingStyle.BARS.pageOf(14), 25L);
    }

    @Test
    void referencesReadAsTheStyleSays() {
        Map<DraftingStyle, String> forms = Map.of(
                DraftingStyle.HOPS, "([\u2190\u2192] )?\\d+\\.[A-F]\\d(; \\d+\\.[A-F]\\d)?( [\u2190\u2192])?",
                DraftingStyle.PIECES, "((TO|FROM|SEE) SHEET \\d+ ZONE [A-H]\\d ?){1,2}",
                DraftingStyle.BARS, "[A-H]\\d+/\\d+(  [A-H]\\d+/\\d+)?");
        forms.forEach((style, form) -> {
            List<JsonNode> references = demo(style).list("references").stream()
                    .filter(reference -> !reference.get("style").asText().equals("match-letter"))
                    .toList();
            assertThat(references)
                    .hasSizeGreaterThan(80)
                    .allMatch(reference -> reference.get("text").asText().matches(form));
        });
    }

    private static Demo demo(DraftingStyle style) {
        return Demo.all().filter(demo -> demo.style() == style).findFirst().orElseThrow();
    }

    /** Where the inside of one piece of a line meets the inside of another, in points. */
    private static List<Spot> crossings(DrawnSheet sheet) {
        List<Spot[]> pieces = new ArrayList<>();
        sheet.plan().nets().forEach(net -> net.runs().forEach(run -> addPieces(sheet, run, pieces)));
        List<Spot> out = new ArrayList<>();
        for (Spot[] a : pieces) {
            for (Spot[] b : pieces) {
                Spot at = new Spot(b[0].x(), a[0].y());
                if (isInside(at, a) && isInside(at, b)) {
                    out.add(at);
                }
            }
        }
        return out;
    }

    private static void addPieces(DrawnSheet sheet, Run run, List<Spot[]> pieces) {
        for (int i = 1; i < run.points().size(); i++) {
            pieces.add(new Spot[] {
                sheet.pt(run.points().get(i - 1)), sheet.pt(run.points().get(i))
            });
        }
    }

    private static boolean isInside(Spot at, Spot... piece) {
        double[] stroke = {piece[0].x(), piece[0].y(), piece[1].x(), piece[1].y()};
        boolean atEnd = List.of(piece).stream().anyMatch(end -> Math.hypot(end.x() - at.x(), end.y() - at.y()) < 0.01);
        return distance(stroke, at) < 0.01 && !atEnd;
    }

    private static double distance(double[] stroke, Spot at) {
        return Line2D.ptSegDist(stroke[0], stroke[1], stroke[2], stroke[3], at.x(), at.y());
    }

    /** In degrees, from 0 to 90. */
    private static long slope(List<double[]> corners) {
        double[] a = corners.get(0);
        double[] b = corners.get(1);
        return Math.round(Math.toDegrees(Math.atan2(Math.abs(b[1] - a[1]), Math.abs(b[0] - a[0]))));
    }
}
