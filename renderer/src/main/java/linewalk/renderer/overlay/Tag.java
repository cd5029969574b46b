package linewalk.renderer.overlay;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** A small label of one or more rows on whitened paper, with a leader where it stands off. */
record Tag(List<String> rows, Color color, double sizePt) {

    private static final double LEADING = 1.16;
    private static final double PAD = 0.22;

    Tag {
        rows = List.copyOf(rows);
    }

    double widthPt() {
        return rows.stream()
                        .mapToDouble(r -> Lettering.widthPt(r, sizePt))
                        .max()
                        .orElse(0)
                + 2 * PAD * sizePt;
    }

    double heightPt() {
        return rows.size() * LEADING * sizePt + PAD * sizePt;
    }

    /** Finds its place and draws itself there. */
    void stand(Canvas canvas, Labels labels, Rectangle2D near, double reachOnA3) {
        Rectangle2D at = labels.place(near, widthPt(), heightPt(), reachOnA3);
        Line2D leader = Labels.leader(at, near);
        if (leader.getP1().distance(leader.getP2()) > sizePt) {
            canvas.pen(Tint.see(color, 0xA0), Ink.line(sizePt * 0.09));
            canvas.line(leader.getX1(), leader.getY1(), leader.getX2(), leader.getY2());
        }
        draw(canvas, at);
    }

    void draw(Canvas canvas, Rectangle2D at) {
        canvas.fill(Tint.PAPER, at);
        canvas.pen(color, Ink.line(sizePt * 0.1));
        double y = at.getY() + PAD * sizePt / 2;
        for (int i = 0; i < rows.size(); i++) {
            canvas.text(rows.get(i), at.getX() + PAD * sizePt, y + (i * LEADING + 0.9) * sizePt, sizePt);
        }
    }
}
