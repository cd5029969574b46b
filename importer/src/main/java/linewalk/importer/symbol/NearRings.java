package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Stroke;

/** Outlines of a scan that are open at one corner, where the ink was ragged or a leader ends there. */
public final class NearRings {

    /** How far the ends are apart at most, in widths of the pen and in dashes. */
    private static final double GAP = 2;

    private static final double DASH = 0.3;

    private static final int CORNERS = 4;

    /** A corner that the sides would meet in lies this near, in such gaps. */
    private static final double CORNER = 1.5;

    private NearRings() {}

    public static Marks closed(Marks marks) {
        return new Marks(
                marks.widthPt(),
                marks.heightPt(),
                marks.strokes().stream().map(NearRings::closed).toList(),
                marks.fills(),
                marks.glyphs(),
                marks.pictures());
    }

    private static Stroke closed(Stroke s) {
        List<Point> p = s.points();
        boolean open = !s.closed() && !s.curved() && p.size() >= CORNERS;
        double gap = p.get(0).distancePt(p.get(p.size() - 1));
        double most = Math.max(GAP * s.widthPt(), DASH * s.dash().onPt());
        if (!open || gap > most || s.lengthPt() < 10 * gap) {
            return s;
        }
        Point corner = corner(s);
        List<Point> ring = corner.distancePt(s.first()) < CORNER * most
                ? Stream.concat(Stream.of(corner), p.subList(1, p.size() - 1).stream())
                        .toList()
                : new ArrayList<>(p);
        return new Stroke(ring, true, false, s.widthPt(), s.dash(), s.filled());
    }

    /** Where the first and the last side, led on, would meet; far away where they are parallel. */
    private static Point corner(Stroke s) {
        List<Point> p = s.points();
        Point a = p.get(1);
        Direction first = Direction.of(a, s.first());
        Point b = p.get(p.size() - 2);
        Direction last = Direction.of(b, s.last());
        double cross = first.dx() * last.dy() - first.dy() * last.dx();
        if (Math.abs(cross) < 0.1) {
            return new Point(Double.MAX_VALUE, Double.MAX_VALUE);
        }
        double along = ((b.xPt() - a.xPt()) * last.dy() - (b.yPt() - a.yPt()) * last.dx()) / cross;
        return a.plus(along * first.dx(), along * first.dy());
    }
}
