package linewalk.renderer;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;

/** A course without its small detail: hops over other lines, steps of a scan. */
final class Outline {

    private Outline() {}

    /** The course's main corners, ends included; nothing left out lies farther from the outline than the tolerance. */
    static List<Point> of(List<Point> course, double tolerancePt) {
        if (course.size() < 3) {
            return course;
        }
        Point a = course.get(0);
        Point b = course.get(course.size() - 1);
        int farthest = 0;
        double most = tolerancePt;
        for (int i = 1; i < course.size() - 1; i++) {
            Point p = course.get(i);
            double d = Line2D.ptSegDist(a.xPt(), a.yPt(), b.xPt(), b.yPt(), p.xPt(), p.yPt());
            if (d > most) {
                most = d;
                farthest = i;
            }
        }
        if (farthest == 0) {
            return List.of(a, b);
        }
        List<Point> corners = new ArrayList<>(of(course.subList(0, farthest + 1), tolerancePt));
        corners.remove(corners.size() - 1);
        corners.addAll(of(course.subList(farthest, course.size()), tolerancePt));
        return corners;
    }
}
