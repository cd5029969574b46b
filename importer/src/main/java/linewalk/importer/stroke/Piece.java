package linewalk.importer.stroke;

import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * One stroke or painted outline.
 *
 * @param order of drawing
 * @param penPt half of it belongs to each side of the points; 0 for a painted outline
 * @param mark the {@link Stroke} or {@link Fill} itself
 */
record Piece(int order, List<Point> points, boolean closed, double penPt, Box box, Object mark) {

    static Piece of(int order, Stroke s) {
        return new Piece(order, s.points(), s.closed(), s.widthPt(), s.box(), s);
    }

    static Piece of(int order, Fill f) {
        return new Piece(order, f.outline(), true, 0, f.box(), f);
    }

    boolean painted() {
        return mark instanceof Fill;
    }

    double sizePt() {
        return Math.max(box.widthPt(), box.heightPt());
    }

    List<Segment> segments() {
        List<Segment> all = Segment.of(points);
        if (closed && points.size() > 2) {
            all.add(new Segment(points.get(points.size() - 1), points.get(0)));
        }
        return all;
    }
}
