package linewalk.samples.sheet;

import java.util.List;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.Grid;
import linewalk.samples.symbol.Ink;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.Pen;

/** Border, zone labels and ticks, in millimetres. */
final class FramePainter {
    private final DraftingStyle style;
    private final Grid grid;
    private final Ink ink;

    FramePainter(DraftingStyle style, ScaledInk ink) {
        this.style = style;
        this.grid = style.grid();
        this.ink = ink.as(DrawnText.Role.FRAME);
    }

    void paint() {
        double strip = grid.stripMm();
        box(Pen.FRAME, 0);
        box(Pen.THIN, strip);
        columns(grid.topMm() - strip, grid.topMm());
        rows(grid.leftMm() - strip, grid.leftMm());
        if (grid.bothSides()) {
            columns(grid.bottomMm(), grid.bottomMm() + strip);
            rows(grid.rightMm(), grid.rightMm() + strip);
        }
        if (grid.centreMarks()) {
            centreMarks();
        }
    }

    private void box(Pen pen, double outMm) {
        double x0 = grid.leftMm() - outMm;
        double y0 = grid.topMm() - outMm;
        double x1 = grid.rightMm() + outMm;
        double y1 = grid.bottomMm() + outMm;
        ink.closed(pen, x0, y0, x1, y0, x1, y1, x0, y1);
    }

    private void columns(double y0, double y1) {
        List<Double> borders = grid.columnsMm();
        for (int i = 0; i < grid.columnLabels().size(); i++) {
            double middle = (borders.get(i) + borders.get(i + 1)) / 2;
            ink.text(
                    Lettering.centred(3.5),
                    middle,
                    (y0 + y1) / 2,
                    grid.columnLabels().get(i));
            if (i > 0) {
                ink.line(Pen.THIN, borders.get(i), y0, borders.get(i), y1);
            }
        }
    }

    private void rows(double x0, double x1) {
        List<Double> borders = grid.rowsMm();
        for (int i = 0; i < grid.rowLabels().size(); i++) {
            double middle = (borders.get(i) + borders.get(i + 1)) / 2;
            ink.text(
                    Lettering.centred(3.5),
                    (x0 + x1) / 2,
                    middle,
                    grid.rowLabels().get(i));
            if (i > 0) {
                ink.line(Pen.THIN, x0, borders.get(i), x1, borders.get(i));
            }
        }
    }

    /** On the paper's axes, from its edge to a little inside the frame. */
    private void centreMarks() {
        double x = style.widthMm() / 2;
        double y = style.heightMm() / 2;
        ink.line(Pen.FRAME, x, 0, x, grid.topMm() + 5);
        ink.line(Pen.FRAME, x, style.heightMm(), x, grid.bottomMm() - 5);
        ink.line(Pen.FRAME, 0, y, grid.leftMm() + 5, y);
        ink.line(Pen.FRAME, style.widthMm(), y, grid.rightMm() - 5, y);
    }
}
