package linewalk.renderer.overlay;

import linewalk.drawing.Box;
import linewalk.drawing.Sheet;
import linewalk.drawing.ZoneGrid;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** The zone grid as faint lines, with each field's label just inside the top and left edges. */
final class GridOverlay {

    private final Sheet sheet;
    private final Canvas canvas;
    private final Scale scale;

    GridOverlay(Sheet sheet, Canvas canvas, Scale scale) {
        this.sheet = sheet;
        this.canvas = canvas;
        this.scale = scale;
    }

    void paint() {
        ZoneGrid grid = sheet.grid();
        if (grid == null) {
            return;
        }
        Box all = grid.extent();
        canvas.pen(Tint.GRID, Ink.line(scale.pt(0.6)));
        for (ZoneGrid.Band c : grid.columns()) {
            canvas.line(c.fromPt(), all.y0Pt(), c.fromPt(), all.y1Pt());
        }
        for (ZoneGrid.Band r : grid.rows()) {
            canvas.line(all.x0Pt(), r.fromPt(), all.x1Pt(), r.fromPt());
        }
        canvas.line(all.x1Pt(), all.y0Pt(), all.x1Pt(), all.y1Pt());
        canvas.line(all.x0Pt(), all.y1Pt(), all.x1Pt(), all.y1Pt());
        canvas.pen(Tint.GRID_LABEL, Ink.line(scale.pt(0.6)));
        double inset = scale.pt(6);
        for (ZoneGrid.Band c : grid.columns()) {
            canvas.textAround(c.label(), (c.fromPt() + c.toPt()) / 2, all.y0Pt() + inset, scale.textPt());
        }
        for (ZoneGrid.Band r : grid.rows()) {
            canvas.textAround(r.label(), all.x0Pt() + inset, (r.fromPt() + r.toPt()) / 2, scale.textPt());
        }
    }
}
