package linewalk.importer.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Point;

/**
 * Strokes as the drafter meant them. CAD programs may write every straight piece, and every dash of a dashed line, as a
 * stroke of its own, and some twice: pieces drawn twice count once, dashes in a row become one dashed stroke, and pieces
 * that continue one another become one polyline.
 */
public final class WholeStrokes {

    /** How many times longer than wide a bar is that stands for a line, and how wide a line is at most. */
    private static final double BAR = 5;

    private static final double WIDEST_PT = 5;

    private WholeStrokes() {}

    public static Marks of(Marks marks) {
        double tolPt = marks.tolerancePt();
        List<Fill> fills = new ArrayList<>(marks.fills());
        List<Stroke> drawn = lines(marks.strokes(), fills);
        List<Stroke> strokes = new DashedRuns(tolPt).join(drawn);
        strokes = DashedRings.join(strokes, tolPt);
        strokes = Diamonds.join(strokes, tolPt);
        // balls are whole only when their own pieces are chained
        strokes = new Chains(fills, tolPt)
                .join(DashedWays.join(new Chains(fills, tolPt).join(strokes), tolPt)).stream()
                        .map(Smooth::seen)
                        .toList();
        return new Marks(marks.widthPt(), marks.heightPt(), strokes, fills, marks.glyphs(), marks.pictures());
    }

    /** Strokes that stand in rows like dashes, row by row: of chain lines, or of others, among which may be letters. */
    public static List<List<Stroke>> rows(Marks marks, boolean chains) {
        return new DashedRuns(marks.tolerancePt()).rows(marks.strokes(), chains);
    }

    /** The same without joining dashes: inside symbols, short strokes in a row are marks of their own. */
    public static List<Stroke> apart(List<Stroke> strokes, List<Fill> fills, double tolPt) {
        return new Chains(fills, tolPt)
                .join(lines(strokes, new ArrayList<>(fills))).stream()
                        .map(Smooth::seen)
                        .toList();
    }

    /** Strokes once each, with the bars that stand for lines, which are taken out of the fills. */
    private static List<Stroke> lines(List<Stroke> strokes, List<Fill> fills) {
        List<Stroke> drawn = new ArrayList<>(once(strokes));
        fills.removeIf(f -> thinBar(f).map(drawn::add).orElse(false));
        return drawn;
    }

    /** A filled rectangle many times longer than wide is a line. */
    private static Optional<Stroke> thinBar(Fill f) {
        List<Point> p = f.outline();
        if (f.light() || f.curved() || p.size() != 4) {
            return Optional.empty();
        }
        double one = p.get(0).distancePt(p.get(1));
        double two = p.get(1).distancePt(p.get(2));
        int start = one > two ? 0 : 1;
        double length = Math.max(one, two);
        double width = Math.min(one, two);
        boolean even = Math.abs(p.get(2).distancePt(p.get(3)) - one) < 0.1 * one + 0.1
                && Math.abs(p.get(3).distancePt(p.get(0)) - two) < 0.1 * two + 0.1;
        if (!even || length < BAR * width || width > WIDEST_PT) {
            return Optional.empty();
        }
        Point a = middle(p.get(start), p.get((start + 3) % 4));
        Point b = middle(p.get(start + 1), p.get((start + 2) % 4));
        return Optional.of(new Stroke(List.of(a, b), false, false, width, Dash.SOLID, false));
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
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
