package linewalk.importer.symbol;

import java.util.List;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Stroke;

/** Small shapes that never are line work. */
public final class Motif {

    private static final int TURNS = 3;

    private Motif() {}

    /** A spring: the stroke turns sharply to and fro. */
    public static boolean zigzag(Stroke s) {
        if (s.closed() || s.curved()) {
            return false;
        }
        List<Point> p = s.points();
        int turns = 0;
        int last = 0;
        for (int i = 1; i + 1 < p.size(); i++) {
            Direction a = Direction.of(p.get(i - 1), p.get(i));
            Direction b = Direction.of(p.get(i), p.get(i + 1));
            double cross = a.dx() * b.dy() - a.dy() * b.dx();
            int side = Math.abs(cross) < 0.3 ? 0 : cross > 0 ? 1 : -1;
            boolean square = Math.abs(a.along(b)) < 0.05;
            if (side != 0 && !square) {
                turns = side == -last ? turns + 1 : 1;
                last = side;
                if (turns >= TURNS) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Both ends of the line along which a spring pushes, beside its first point and its last. */
    public static List<Point> axisEnds(Stroke zigzag) {
        List<Point> p = zigzag.points();
        int n = p.size();
        Point from = middle(p.get(0), p.get(1));
        Direction axis = Direction.of(from, middle(p.get(n - 2), p.get(n - 1)));
        return List.of(p.get(0), p.get(n - 1)).stream()
                .map(end -> from.plus(axis.dx() * axis.ahead(from, end), axis.dy() * axis.ahead(from, end)))
                .toList();
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
    }
}
