package linewalk.importer.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Point;

/**
 * Strokes as the drafter meant them. CAD programs may write every straight piece, and every dash of a dashed line, as a
 * stroke of its own, and some twice: pieces drawn twice count once, dashes in a row become one dashed stroke, and pieces
 * that continue one another become one polyline.
 */
public final class WholeStrokes {

    private WholeStrokes() {}

    public static Marks of(Marks marks) {
        double tolPt = marks.tolerancePt();
        List<Stroke> strokes = once(marks.strokes());
        strokes = new DashedRuns(tolPt).join(strokes);
        strokes = new Chains(tolPt).join(strokes);
        return new Marks(marks.widthPt(), marks.heightPt(), strokes, marks.fills(), marks.glyphs(), marks.pictures());
    }

    private static List<Stroke> once(List<Stroke> strokes) {
        Set<List<Long>> seen = new HashSet<>();
        List<Stroke> out = new ArrayList<>();
        for (Stroke s : strokes) {
            if (s.closed() || s.points().size() != 2 || seen.add(key(s.first(), s.last()))) {
                out.add(s);
            }
        }
        return out;
    }

    /** The same for both directions; to a tenth of a point. */
    private static List<Long> key(Point a, Point b) {
        boolean forth = a.xPt() < b.xPt() || (a.xPt() == b.xPt() && a.yPt() <= b.yPt());
        Point p = forth ? a : b;
        Point q = forth ? b : a;
        return List.of(
                Math.round(p.xPt() * 10), Math.round(p.yPt() * 10), Math.round(q.xPt() * 10), Math.round(q.yPt() * 10));
    }
}
