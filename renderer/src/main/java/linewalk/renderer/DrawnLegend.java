package linewalk.renderer;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.LineKind;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** The meanings of the marks that the drawn look used. */
final class DrawnLegend {

    private DrawnLegend() {}

    static List<Picture.Mark> of(FlowGraph graph, Doubts doubts, boolean cut) {
        List<Picture.Mark> marks = new ArrayList<>();
        for (LineKind kind : LineKind.values()) {
            if (graph.edges.stream().anyMatch(e -> !byHand(e) && kindOf(e) == kind)) {
                marks.add(new Picture.Mark(meaning(kind), (c, x, y) -> line(c, x, y, kind)));
            }
        }
        if (graph.edges.stream().anyMatch(DrawnLegend::byHand)) {
            marks.add(
                    new Picture.Mark("Joined by hand: not followed on the drawing", (c, x, y) -> line(c, x, y, null)));
        }
        if (graph.stops.stream().anyMatch(s -> s.crossing != null)) {
            marks.add(new Picture.Mark(
                    "Sheet left (white) and sheet entered (grey)",
                    (c, x, y) -> StopFigure.crossingMark(c, x + 12, y - 3, 20, 26)));
        }
        marks.add(new Picture.Mark("Item number", (c, x, y) -> StopFigure.balloon(c, "7", x + 22, y + 10)));
        if (graph.stops.stream()
                .anyMatch(s -> s.active != null && s.part.positions().size() > 1)) {
            marks.add(new Picture.Mark(
                    "Valve squares: the lines meet the square that is active on this path", DrawnLegend::squares));
        }
        marks.addAll(shared(doubts, cut));
        return marks;
    }

    static List<Picture.Mark> shared(Doubts doubts, boolean cut) {
        List<Picture.Mark> marks = new ArrayList<>();
        if (!doubts.all().isEmpty()) {
            marks.add(new Picture.Mark(
                    "In doubt: see the list of doubts", (c, x, y) -> StopFigure.doubtMark(c, "?1", x + 22, y + 10)));
        }
        if (cut) {
            marks.add(new Picture.Mark(
                    "Goes on at the same letter", (c, x, y) -> MatchMarks.paint(c, "A", x + 22, y + 10, 0, false)));
        }
        return marks;
    }

    private static boolean byHand(FlowGraph.Edge e) {
        return e.along() != null && e.along().line().runs().isEmpty();
    }

    private static LineKind kindOf(FlowGraph.Edge e) {
        return e.along() == null ? LineKind.WORKING : e.along().line().kind();
    }

    private static String meaning(LineKind kind) {
        String line = Words.capital(kind.name().toLowerCase(java.util.Locale.ROOT)) + " line";
        return line + ", arrow in the direction of flow; pressure not classified";
    }

    private static void line(Canvas c, double x, double y, LineKind kind) {
        c.pen(
                Ink.PATH,
                kind == null
                        ? Ink.dashed(2.6, 14, 4, 2.6f, 4)
                        : kind == LineKind.PILOT
                                ? Ink.dashed(2.6, 10, 4)
                                : kind == LineKind.DRAIN ? Ink.dashed(2.6, 4, 3) : Ink.line(2.6));
        c.line(x, y + 10, x + 44, y + 10);
        if (kind != null) {
            c.arrow(x + 28, y + 10, 1, 0, 12);
        }
    }

    private static void squares(Canvas c, double x, double y) {
        c.pen(Ink.BLACK, Ink.line(1));
        c.rect(x + 20, y + 2, 15, 15);
        c.pen(Ink.BLACK, Ink.line(2));
        c.rect(x + 5, y + 2, 15, 15);
        c.pen(Ink.PATH, Ink.line(2.6));
        c.line(x + 12.5, y - 2, x + 12.5, y + 2);
        c.line(x + 12.5, y + 17, x + 12.5, y + 20);
    }
}
