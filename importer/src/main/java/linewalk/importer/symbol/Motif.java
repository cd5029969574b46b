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
}
