package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * Arrowheads are no line work. An open head is told from a check valve's seat by its shaft: the line runs between the
 * arms to the tip, where a seat holds its ball.
 */
final class ArrowheadFinder {

    private static final double LONGEST_ARM_TOL = 20;

    /** An outline that measures more heads than this is the frame of a unit, no symbol. */
    private static final double ROOM = 15;

    /** A seat's ball in what its arms are apart. */
    private static final double BALL = 1.5;

    private final double tolPt;
    private final Near<Stroke> open;
    private final Near<Stroke> closed;
    private final List<Arrowhead> found = new ArrayList<>();
    private final List<Stroke> shafts = new ArrayList<>();
    private final Set<Stroke> strokes = Collections.newSetFromMap(new IdentityHashMap<>());

    ArrowheadFinder(List<Stroke> strokes, List<Fill> fills, double tolPt) {
        this.tolPt = tolPt;
        this.open = new Near<>(strokes.stream().filter(s -> !s.closed()).toList(), Stroke::box);
        this.closed = new Near<>(strokes.stream().filter(Stroke::closed).toList(), Stroke::box);
        fills.forEach(this::filled);
        for (Stroke s : strokes) {
            if (s.closed() && s.points().size() == 3) {
                outlined(s);
            } else if (!s.closed() && s.dash().solid()) {
                open(s);
            }
        }
    }

    List<Arrowhead> found() {
        return found;
    }

    /** What the line would be under an outlined head, which leaves it out. */
    List<Stroke> shafts() {
        return shafts;
    }

    /** The strokes that open heads are drawn with. */
    Set<Stroke> strokes() {
        return strokes;
    }

    private void filled(Fill f) {
        if (!f.light() && f.outline().size() == 3) {
            found.add(triangle(f.outline()));
        }
    }

    /** A small triangle of its own at the end of a line; those within symbols belong to them. */
    private void outlined(Stroke s) {
        Box b = s.box();
        boolean small = Math.max(b.widthPt(), b.heightPt()) < LONGEST_ARM_TOL * tolPt;
        Arrowhead head = triangle(s.points());
        if (!small || !alone(s, head)) {
            return;
        }
        double depth = s.points().stream()
                .mapToDouble(p -> -head.direction().ahead(head.tip(), p))
                .max()
                .orElse(0);
        Point base = head.tip()
                .plus(-head.direction().dx() * depth, -head.direction().dy() * depth);
        if (endsAt(base) || endsAt(head.tip()) || shaft(head.tip(), base, s, s)) {
            found.add(head);
            strokes.add(s);
            if (endsAt(base)) {
                shafts.add(new Stroke(List.of(base, head.tip()), false, false, s.widthPt(), s.dash(), false));
            }
        }
    }

    /** No other outline is near but one that the tip points at, a flag or a bubble, or an enclosure's around it all. */
    private boolean alone(Stroke s, Arrowhead head) {
        Box b = s.box();
        double deep = Math.max(b.widthPt(), b.heightPt()) / 2;
        Point behind =
                head.tip().plus(-head.direction().dx() * deep, -head.direction().dy() * deep);
        return closed.touching(b.grow(tolPt)).stream()
                .allMatch(o -> o == s
                        || isAroundAll(o.box(), s)
                        || o.dash().chain()
                        || o.points().size() > 3 && !isWithin(behind, Outline.of(o)));
    }

    private boolean isWithin(Point p, Outline o) {
        return o.covers(p) || o.box().grow(tolPt).contains(p) && o.edgeDistancePt(p) <= tolPt;
    }

    private static boolean isAroundAll(Box outline, Stroke head) {
        double size = Math.max(head.box().widthPt(), head.box().heightPt());
        return Math.min(outline.widthPt(), outline.heightPt()) > ROOM * size;
    }

    private boolean endsAt(Point p) {
        return open.within(p, tolPt).stream()
                .anyMatch(o -> o.first().distancePt(p) <= tolPt || o.last().distancePt(p) <= tolPt);
    }

    private static Arrowhead triangle(List<Point> t) {
        int tip = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            // the tip's two sides are the most alike
            double unlike =
                    Math.abs(t.get(i).distancePt(t.get((i + 1) % 3)) - t.get(i).distancePt(t.get((i + 2) % 3)));
            if (unlike < least) {
                least = unlike;
                tip = i;
            }
        }
        return head(t.get(tip), t.get((tip + 1) % 3), t.get((tip + 2) % 3));
    }

    private void open(Stroke s) {
        if (s.points().size() == 3) {
            if (isHead(s.points().get(1), s.first(), s.last(), s, s)) {
                found.add(head(s.points().get(1), s.first(), s.last()));
                strokes.add(s);
            }
        } else if (s.points().size() == 2 && s.lengthPt() < LONGEST_ARM_TOL * tolPt) {
            arms(s, s.first(), s.last());
            arms(s, s.last(), s.first());
        }
    }

    /** Two strokes that start from one tip. */
    private void arms(Stroke a, Point tip, Point end) {
        for (Stroke b : open.within(tip, tolPt)) {
            if (b == a || b.points().size() != 2 || strokes.contains(b) || strokes.contains(a)) {
                continue;
            }
            Point other =
                    b.first().distancePt(tip) < tolPt ? b.last() : b.last().distancePt(tip) < tolPt ? b.first() : null;
            if (other != null && isHead(tip, end, other, a, b)) {
                found.add(head(tip, end, other));
                strokes.add(a);
                strokes.add(b);
            }
        }
    }

    private static Arrowhead head(Point tip, Point a, Point b) {
        return new Arrowhead(tip, Direction.of(middle(a, b), tip), Box.around(List.of(tip, a, b)));
    }

    private boolean isHead(Point tip, Point a, Point b, Stroke one, Stroke two) {
        double p = tip.distancePt(a);
        double q = tip.distancePt(b);
        double base = a.distancePt(b);
        boolean shaped = Math.abs(p - q) < 0.12 * p && base < 1.5 * p && base > 0.2 * p && p < LONGEST_ARM_TOL * tolPt;
        return shaped && !holdsBall(tip, middle(a, b), base) && shaft(tip, middle(a, b), one, two);
    }

    /** A seat, though the line was drawn on under its ball. */
    private boolean holdsBall(Point tip, Point between, double basePt) {
        Direction in = Direction.of(tip, between);
        double depth = tip.distancePt(between);
        return closed.within(between, basePt).stream()
                .filter(o -> o.curved() && Outline.of(o).circle())
                .map(Stroke::box)
                .anyMatch(b -> b.widthPt() < BALL * basePt
                        && in.aside(tip, b.center()) < tolPt
                        && in.ahead(tip, b.center()) > depth / 2
                        && in.ahead(tip, b.center()) - b.widthPt() / 2 < depth);
    }

    /** A straight stroke runs from the tip back between the arms. */
    private boolean shaft(Point tip, Point base, Stroke one, Stroke two) {
        for (Stroke s : open.within(tip, tolPt)) {
            if (s == one || s == two) {
                continue;
            }
            for (int i = 1; i < s.points().size(); i++) {
                Segment piece = new Segment(s.points().get(i - 1), s.points().get(i));
                if (piece.distancePt(tip) <= tolPt
                        && piece.distancePt(base) <= tolPt
                        && piece.lengthPt() > 1.5 * tip.distancePt(base)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.xPt() + b.xPt()) / 2, (a.yPt() + b.yPt()) / 2);
    }
}
