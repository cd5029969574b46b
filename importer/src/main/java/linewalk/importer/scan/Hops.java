package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Near;

/**
 * Lines that hop over others in a half circle. Two ends that face each other in one straight line, with ink along a half
 * circle from one to the other and another line through the gap, are one line, which passes the other.
 */
final class Hops {

    /** Width of a hop, in widths of the line. */
    private static final double LEAST = 2.5;

    private static final double MOST = 20;

    /** The dashes beside it may end a gap before it. */
    private static final double MOST_DASHED = 32;

    /** Share of the half circle that has ink, of solid lines and of dashed ones. */
    private static final double SOLID = 0.85;

    private static final double DASHED = 0.5;

    /** Into how many parts a half circle is divided to be looked at. */
    private static final int STEPS = 32;

    /** Cosine and sine of the angles between those parts. */
    private static final double[][] AROUND = IntStream.range(1, STEPS)
            .mapToDouble(i -> Math.PI * i / STEPS)
            .mapToObj(angle -> new double[] {Math.cos(angle), Math.sin(angle)})
            .toArray(double[][]::new);

    /** How finely a dashed line's bow is searched for. */
    private static final double SEARCH_PX = 2;

    /** With so much ink on the other side too it is a circle. */
    private static final double CIRCLE = 0.45;

    private final Gauge gauge;
    private final Upright upright;
    private final Map<Piece, Line> lineOf;
    private final Set<Line> lines;
    private final List<DashRow> rows;
    private final Map<Line, Line> united = new IdentityHashMap<>();
    private final Set<Piece> arcs = Collections.newSetFromMap(new IdentityHashMap<>());

    /** An end and the direction in which it would go on. */
    private record End(Line line, double x, double y, double dx, double dy) {}

    /** Half a circle over the gap: middle, radius, unit vectors along the line and to the side of the bow. */
    private record Bow(double x, double y, double r, double dx, double dy, double side) {

        Bow other() {
            return new Bow(x, y, r, dx, dy, -side);
        }

        /**
         * Middle of the pen in a direction.
         *
         * @param direction cosine and sine of its angle from the line
         */
        double[] at(double[] direction, double off) {
            double u = (r + off) * direction[0];
            double v = (r + off) * direction[1] * side;
            return new double[] {x + u * dx - v * dy, y + u * dy + v * dx};
        }
    }

    /**
     * @param lines one for each line; those that prove to be parts of one are made one
     * @param rows of dashes; two that prove to be one are made one
     */
    Hops(Map<Piece, Line> lineOf, Set<Line> lines, List<DashRow> rows, Gauge gauge, Upright upright) {
        this.lineOf = lineOf;
        this.lines = lines;
        this.rows = rows;
        this.gauge = gauge;
        this.upright = upright;
    }

    /** Joins what hops; the pieces that made up the bows. */
    Set<Piece> join(Collection<Piece> pieces) {
        List<End> ends = new ArrayList<>();
        for (Line l : lines) {
            double[] a = l.end(false);
            double[] b = l.end(true);
            ends.add(new End(l, a[0], a[1], -l.straight.dx(), -l.straight.dy()));
            ends.add(new End(l, b[0], b[1], l.straight.dx(), l.straight.dy()));
        }
        Near<End> near = new Near<>(ends, e -> Box.around(new Point(e.x, e.y)));
        Set<End> done = Collections.newSetFromMap(new IdentityHashMap<>());
        for (End e : ends) {
            double reach = most(e) * e.line.width;
            for (End o : near.within(new Point(e.x, e.y), reach)) {
                Bow bow = done.contains(e) || done.contains(o) || !facing(e, o) ? null : bow(e, o);
                if (bow != null) {
                    done.add(e);
                    done.add(o);
                    clear(bow, pieces);
                    unite(e.line, o.line);
                }
            }
        }
        return arcs;
    }

    private double most(End e) {
        return row(e.line) == null ? MOST : MOST_DASHED;
    }

    private boolean facing(End e, End o) {
        double gap = Math.hypot(o.x - e.x, o.y - e.y);
        double wide = Math.max(e.line.width, o.line.width);
        double aside = Math.abs((o.x - e.x) * e.dy - (o.y - e.y) * e.dx);
        return e.line != o.line
                && e.dx * o.dx + e.dy * o.dy < -0.98
                && (o.x - e.x) * e.dx + (o.y - e.y) * e.dy > LEAST * wide
                && gap < Math.max(most(e), most(o)) * wide
                && aside < 1 + 0.4 * wide
                && Math.abs(e.line.width - o.line.width) < 0.35 * wide + 0.5;
    }

    private Bow bow(End e, End o) {
        double gap = Math.hypot(o.x - e.x, o.y - e.y);
        double dx = (o.x - e.x) / gap;
        double dy = (o.y - e.y) / gap;
        double least = row(e.line) != null || row(o.line) != null ? DASHED : SOLID;
        if (!crossed(e, o, gap, dx, dy)) {
            return null;
        }
        boolean dashed = least < SOLID;
        Bow best = null;
        double most = least;
        // a dashed line's last dash may end a gap before the bow begins
        for (double r = gap / 2; r > (dashed ? 0.28 : 0.45) * gap && r > LEAST / 2 * e.line.width; r -= 1) {
            for (double at = r; at <= gap - r + 0.5; at += SEARCH_PX) {
                for (double side : new double[] {-1, 1}) {
                    Bow bow = new Bow(e.x + at * dx, e.y + at * dy, r, dx, dy, side);
                    double inked = inked(bow, e.line.width, dashed, most + 0.02);
                    if (inked > most + 0.02 && inked(bow.other(), e.line.width, false, 0) < CIRCLE) {
                        most = inked;
                        best = bow;
                    }
                }
            }
        }
        return best;
    }

    /** Nothing but what crosses near the middle lies on the straight way. */
    private boolean crossed(End e, End o, double gap, double dx, double dy) {
        int steps = 40;
        int outer = 0;
        int ink = 0;
        int inner = 0;
        for (int i = 0; i <= steps; i++) {
            double t = gap * i / steps;
            boolean here = gauge.ink(upright, e.x + t * dx, e.y + t * dy);
            double clear = Math.min(t, gap - t);
            if (clear > 0.3 * gap) {
                inner += here ? 1 : 0;
            } else if (clear > Math.max(1.2 * e.line.width, 0.1 * gap)) {
                outer++;
                ink += here ? 1 : 0;
            }
        }
        boolean dashed = row(e.line) != null || row(o.line) != null;
        return ink <= (dashed ? 0.5 : 0.4) * outer && (inner > 0 || dashesCross(e, o));
    }

    /** The gap of a dashed line may lie just there. */
    private boolean dashesCross(End e, End o) {
        double mx = (e.x + o.x) / 2;
        double my = (e.y + o.y) / 2;
        double reach = 0.2 * Math.hypot(o.x - e.x, o.y - e.y);
        return rows.stream().anyMatch(r -> {
            double t = r.straight().along(mx, my);
            return Math.abs(r.straight().dx() * e.dx + r.straight().dy() * e.dy) < 0.5
                    && r.straight().aside(mx, my) < reach
                    && t > r.end(false)
                    && t < r.end(true);
        });
    }

    /**
     * Share of the bow that has ink; nothing where that cannot be more than {@code least}.
     *
     * @param alone without the ink of what crosses the bow
     */
    private double inked(Bow bow, double wide, boolean alone, double least) {
        int missed = 0;
        double slack = 0.4 * wide + 0.06 * bow.r;
        for (double[] direction : AROUND) {
            boolean ink = false;
            for (double off = -slack; off <= slack && !ink; off += 1) {
                ink = ink(bow, direction, off);
            }
            boolean crossed = alone && (ink(bow, direction, slack + wide) || ink(bow, direction, -slack - wide));
            if ((!ink || crossed) && AROUND.length - ++missed <= least * AROUND.length) {
                return 0;
            }
        }
        return 1 - (double) missed / AROUND.length;
    }

    private boolean ink(Bow bow, double[] direction, double off) {
        double[] p = bow.at(direction, off);
        return gauge.ink(upright, p[0], p[1]);
    }

    private void clear(Bow bow, Collection<Piece> pieces) {
        for (Piece p : pieces) {
            boolean all = p.count() > 0;
            for (int i = 0; i < p.count() && all; i++) {
                double u = (p.xs[i] - bow.x) * bow.dx + (p.ys[i] - bow.y) * bow.dy;
                double v = ((p.ys[i] - bow.y) * bow.dx - (p.xs[i] - bow.x) * bow.dy) * bow.side;
                double r = Math.hypot(u, v);
                all = v > -0.3 * bow.r && r > 0.6 * bow.r && r < 1.4 * bow.r;
            }
            Line l = lineOf.get(p);
            boolean passes = l != null && l.span() > 2.2 * bow.r;
            if (all && !passes) {
                arcs.add(p);
            }
        }
    }

    private DashRow row(Line l) {
        Line now = now(l);
        return rows.stream().filter(r -> r.dashes().contains(now)).findFirst().orElse(null);
    }

    private Line now(Line l) {
        Line now = l;
        while (united.containsKey(now)) {
            now = united.get(now);
        }
        return now;
    }

    private void unite(Line first, Line second) {
        Line a = now(first);
        Line b = now(second);
        DashRow ra = row(a);
        DashRow rb = row(b);
        if (a == b || ra != null && ra == rb) {
            return;
        }
        if (ra == null && rb == null) {
            united.put(b, a);
            a.pieces.addAll(b.pieces);
            b.pieces.forEach(p -> lineOf.put(p, a));
            lines.remove(b);
            a.fit();
            return;
        }
        DashRow one = ra == null ? new DashRow(List.of(a), a.straight, rb.gapPx(), rb.chain()) : ra;
        DashRow two = rb == null ? new DashRow(List.of(b), b.straight, ra.gapPx(), ra.chain()) : rb;
        rows.remove(one);
        rows.remove(two);
        rows.add(one.with(two));
    }
}
