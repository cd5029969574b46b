package linewalk.renderer;

import java.util.ArrayList;
import java.util.List;
import linewalk.renderer.sheet.Ink;

/** The meanings of the marks that the cuttings look used. */
final class CuttingsLegend {

    private CuttingsLegend() {}

    static List<Picture.Mark> of(PrintJob job, Doubts doubts, boolean crossings, boolean cut) {
        List<Picture.Mark> marks = new ArrayList<>();
        boolean classified = job.moment().state() != null;
        if (classified) {
            List<LineLook> looks = job.subject().excerpt().lines().stream()
                    .map(l -> LineLook.of(l, job.moment()))
                    .toList();
            marks.addAll(LineLegend.of(looks, job.facts().palette()));
            if (looks.stream().anyMatch(LineLook::changed)) {
                marks.add(LineLegend.change());
            }
        }
        String arrows = job.subject().isPath() ? ", arrow in the direction of flow" : "";
        marks.add(new Picture.Mark(
                classified
                        ? "A band of the class's colour over the original" + arrows
                                + ". Lines without a band may be under pressure"
                        : "A band over the original" + arrows + ", as drawn at rest: all lines may be under pressure",
                (c, x, y) -> {
                    c.pen(Ink.BLACK, Ink.line(1.2));
                    c.line(x, y + 10, x + 44, y + 10);
                    c.pen(classified ? Ink.PALE : Ink.OVERLAY, Ink.line(8));
                    c.line(x, y + 10, x + 44, y + 10);
                    if (!arrows.isEmpty()) {
                        c.pen(Ink.PATH, Ink.line(1));
                        c.arrow(x + 28, y + 10, 1, 0, 12);
                    }
                }));
        marks.add(new Picture.Mark("A straight stretch left out", (c, x, y) -> {
            c.pen(Ink.PATH, Ink.dashed(2.6, 2.6f, 2.6f));
            c.line(x + 12, y + 10, x + 32, y + 10);
        }));
        if (crossings) {
            marks.add(new Picture.Mark("From sheet to sheet: from a reference to its mate", (c, x, y) -> {
                c.pen(Ink.PATH, Ink.line(2.2));
                c.line(x, y + 10, x + 40, y + 10);
                c.arrow(x + 44, y + 10, 1, 0, 10);
            }));
        }
        marks.add(new Picture.Mark("Item number", (c, x, y) -> PrintMarks.balloon(c, "7", x + 22, y + 10)));
        marks.addAll(DrawnLegend.shared(doubts, cut));
        return marks;
    }
}
