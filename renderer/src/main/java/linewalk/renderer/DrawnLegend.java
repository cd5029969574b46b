package linewalk.renderer;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.LineKind;
import linewalk.linker.step.PressureClass;
import linewalk.renderer.ink.Palette;
import linewalk.renderer.iso.Duty;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** What the marks of the drawn look mean; only those that the print uses. */
final class DrawnLegend {

    private final SchemeBuilder.Built built;
    private final List<Picture.Mark> marks = new ArrayList<>();

    private DrawnLegend(SchemeBuilder.Built built) {
        this.built = built;
    }

    static List<Picture.Mark> of(
            PrintJob job,
            SchemeBuilder.Built built,
            Doubts doubts,
            List<MatchFigure> cuts,
            boolean drilled,
            boolean framed,
            boolean aside) {
        DrawnLegend legend = new DrawnLegend(built);
        List<LineLook> looks = built.strands().values().stream()
                .map(strand -> LineLook.of(strand.line(), job.moment()))
                .toList();
        legend.marks.addAll(LineLegend.of(looks, job.facts().palette()));
        if (looks.stream().anyMatch(LineLook::changed)
                || built.parts().values().stream().anyMatch(job.moment()::hasChanged)) {
            legend.marks.add(LineLegend.change());
        }
        legend.add(
                job.moment().flows() == null
                        ? "The way oil goes, where it moves"
                        : "The way oil surely goes; short lines have no room for it",
                DrawnLegend::way);
        if (aside) {
            legend.add(
                    "Fine dashes in a line's colour: leads to a control port (long) or a drain (short)",
                    DrawnLegend::aside);
        }
        if (drilled) {
            legend.add("Line between walls: drilled in a block, cannot be touched", DrawnLegend::drilled);
        }
        legend.figures(framed);
        legend.marks.addAll(shared(doubts, !cuts.isEmpty()));
        if (cuts.stream().anyMatch(MatchFigure::warns)) {
            legend.add(
                    "Letter in a square: STORED PRESSURE or a LOAD in that line",
                    (c, x, y) -> MatchMarks.warn(c, "C", x + 22, y + 10));
        }
        return legend.marks;
    }

    static List<Picture.Mark> shared(Doubts doubts, boolean cut) {
        List<Picture.Mark> marks = new ArrayList<>();
        if (!doubts.all().isEmpty()) {
            marks.add(new Picture.Mark(
                    "In doubt: see the list of doubts", (c, x, y) -> PrintMarks.doubt(c, "?1", x + 22, y + 10)));
        }
        if (cut) {
            marks.add(new Picture.Mark(
                    "Goes on at the same letter", (c, x, y) -> MatchMarks.paint(c, "C", x + 22, y + 10, "", false)));
        }
        return marks;
    }

    private void add(String meaning, linewalk.renderer.sheet.Row.Painter sample) {
        marks.add(new Picture.Mark(meaning, sample));
    }

    private void figures(boolean framed) {
        if (built.scheme().nodes().stream().anyMatch(n -> n.figure() instanceof CrossingFigure)) {
            add("From sheet to sheet: both addresses", (c, x, y) -> {
                c.pen(Ink.BLACK, Ink.line(0.9));
                c.rect(x + 4, y - 1, 36, 9);
                c.rect(x + 4, y + 12, 36, 9);
                c.line(x + 19, y + 8, x + 19, y + 12);
                c.line(x + 25, y + 8, x + 25, y + 12);
            });
        }
        if (built.scheme().nodes().stream().anyMatch(n -> n.figure() instanceof StubFigure)) {
            add("Branch that leaves this print", (c, x, y) -> {
                c.pen(Ink.BLACK, Ink.line(1.6));
                c.line(x + 22, y + 20, x + 22, y + 8.4);
                StubFigure.slash(c, x + 22, y + 8.4);
                StubFigure.slash(c, x + 22, y + 5);
            });
        }
        if (framed) {
            add("Chain line: parts in one manifold or unit", (c, x, y) -> {
                c.pen(Ink.GREY, Ink.dashed(0.9, 12, 3, 2, 3));
                c.rect(x + 2, y + 2, 40, 15);
            });
        }
        add("Item number", (c, x, y) -> PrintMarks.balloon(c, "7", x + 22, y + 10));
        if (built.parts().values().stream().anyMatch(c -> c.positions().size() > 1)) {
            add("Valve squares: the lines meet the square in which the valve stands", DrawnLegend::squares);
        }
        if (built.scheme().nodes().stream().anyMatch(n -> n.figure() instanceof PartFigure p && p.asks())) {
            add(
                    "In a symbol: not made out on the drawing",
                    (c, x, y) -> c.textAround("?", x + 22, y + 10, Lettering.TEXT_PT));
        }
    }

    private static void way(Canvas c, double x, double y) {
        c.pen(Ink.BLACK, Ink.line(1.6));
        c.line(x + 6, y + 10, x + 40, y + 10);
        c.arrow(x + 29, y + 10, 1, 0, 11);
    }

    private static void aside(Canvas c, double x, double y) {
        LineLook look = new LineLook(PressureClass.SUPPLY, LineKind.WORKING, false, false, null);
        look.style(Palette.OWN, Duty.CONTROL)
                .paint(c, List.of(new Point2D.Double(x, y + 10), new Point2D.Double(x + 44, y + 10)));
    }

    private static void drilled(Canvas c, double x, double y) {
        c.pen(Ink.GREY, Ink.line(0.6));
        c.line(x, y + 5, x + 44, y + 5);
        c.line(x, y + 15, x + 44, y + 15);
        c.pen(Ink.BLACK, Ink.line(2));
        c.line(x, y + 10, x + 44, y + 10);
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
