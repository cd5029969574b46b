package linewalk.renderer.overlay;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import linewalk.drawing.End;
import linewalk.drawing.Point;
import linewalk.drawing.Severity;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** The small marks: ends of lines, ports, numbers of findings. Also drawn in the legend. */
final class Marks {

    private final Canvas canvas;
    private final Scale scale;

    Marks(Canvas canvas, Scale scale) {
        this.canvas = canvas;
        this.scale = scale;
    }

    void end(End end, Color color) {
        Point p = end.place();
        if (end instanceof End.AtPort) {
            square(p, color);
        } else if (end instanceof End.AtReference) {
            round(p, color);
        } else {
            cross(p, color);
        }
    }

    void square(Point p, Color color) {
        double r = scale.pt(2.2);
        Rectangle2D square = new Rectangle2D.Double(p.xPt() - r, p.yPt() - r, 2 * r, 2 * r);
        canvas.fill(color, square);
        canvas.pen(Color.WHITE, Ink.line(scale.pt(0.5)));
        canvas.draw(square);
    }

    void round(Point p, Color color) {
        double r = scale.pt(2.8);
        canvas.fill(color, Canvas.disc(p.xPt(), p.yPt(), r));
        canvas.pen(Color.WHITE, Ink.line(scale.pt(0.5)));
        canvas.circle(p.xPt(), p.yPt(), r);
    }

    /** On white, so that it stands out where a line ends in nothing. */
    void cross(Point p, Color color) {
        double r = scale.pt(3.4);
        for (double width : new double[] {2.6, 1.4}) {
            canvas.pen(width > 2 ? Color.WHITE : color, Ink.line(scale.pt(width)));
            canvas.line(p.xPt() - r, p.yPt() - r, p.xPt() + r, p.yPt() + r);
            canvas.line(p.xPt() - r, p.yPt() + r, p.xPt() + r, p.yPt() - r);
        }
    }

    /** A port that no line was found to meet. */
    void bare(Point p) {
        double r = scale.pt(1.9);
        canvas.fill(Color.WHITE, new Rectangle2D.Double(p.xPt() - r, p.yPt() - r, 2 * r, 2 * r));
        canvas.pen(Tint.PART, Ink.line(scale.pt(0.8)));
        canvas.rect(p.xPt() - r, p.yPt() - r, 2 * r, 2 * r);
    }

    double numberRadiusPt(int number) {
        return scale.pt(number > 99 ? 7.5 : 6);
    }

    void number(int number, Severity severity, double xPt, double yPt) {
        double r = numberRadiusPt(number);
        canvas.fill(Tint.of(severity), Canvas.disc(xPt, yPt, r));
        canvas.pen(Ink.BLACK, Ink.line(scale.pt(severity == Severity.NOTE ? 0.7 : 1.2)));
        canvas.circle(xPt, yPt, r);
        canvas.pen(severity == Severity.ERROR ? Color.WHITE : Ink.BLACK, Ink.line(scale.pt(1)));
        canvas.textAround(String.valueOf(number), xPt, yPt, scale.textPt());
    }
}
