package linewalk.renderer.overlay;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Line;
import linewalk.drawing.Point;

/** A line's drawn course as shapes. */
final class Runs {

    private Runs() {}

    /** All runs in one path: a see-through stroke is then nowhere laid twice. */
    static Path2D path(Line line) {
        Path2D path = new Path2D.Double();
        for (List<Point> run : line.runs()) {
            for (int i = 0; i < run.size(); i++) {
                Point p = run.get(i);
                if (i == 0) {
                    path.moveTo(p.xPt(), p.yPt());
                } else {
                    path.lineTo(p.xPt(), p.yPt());
                }
            }
        }
        return path;
    }

    static List<Line2D> segments(Line line) {
        List<Line2D> segments = new ArrayList<>();
        for (List<Point> run : line.runs()) {
            for (int i = 1; i < run.size(); i++) {
                Point p = run.get(i - 1);
                Point q = run.get(i);
                segments.add(new Line2D.Double(p.xPt(), p.yPt(), q.xPt(), q.yPt()));
            }
        }
        return segments;
    }
}
