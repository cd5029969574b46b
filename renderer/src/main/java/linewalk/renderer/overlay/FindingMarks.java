package linewalk.renderer.overlay;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** Numbers of findings beside their places, each with a leader to the very point. */
final class FindingMarks {

    private final Canvas canvas;
    private final Marks marks;
    private final Labels labels;
    private final Scale scale;

    FindingMarks(Canvas canvas, Marks marks, Labels labels, Scale scale) {
        this.canvas = canvas;
        this.marks = marks;
        this.labels = labels;
        this.scale = scale;
    }

    void points(List<Numbered> findings) {
        for (Numbered n : findings) {
            if (n.finding().place() != null) {
                labels.keepOff(SheetOverlay.rectangle(
                        linewalk.drawing.Box.around(n.finding().place()).grow(scale.pt(3))));
            }
        }
    }

    void stand(List<Numbered> findings) {
        for (Numbered n : findings) {
            if (n.finding().place() != null) {
                stand(n, n.finding().place());
            }
        }
    }

    private void stand(Numbered n, Point p) {
        double size = 2 * marks.numberRadiusPt(n.number());
        double r = scale.pt(5);
        Rectangle2D near = new Rectangle2D.Double(p.xPt() - r, p.yPt() - r, 2 * r, 2 * r);
        Rectangle2D at = labels.place(near, size, size, Labels.FAR);
        Line2D leader = new Line2D.Double(at.getCenterX(), at.getCenterY(), p.xPt(), p.yPt());
        canvas.pen(Ink.DOUBT, Ink.line(scale.pt(0.8)));
        canvas.draw(leader);
        canvas.fill(Ink.DOUBT, Canvas.disc(p.xPt(), p.yPt(), scale.pt(1.4)));
        marks.number(n.number(), n.finding().severity(), at.getCenterX(), at.getCenterY());
    }
}
