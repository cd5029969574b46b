package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Small circles on a dashed line, as ports are drawn on the outline of a block. On a vector page the line runs on beneath
 * the circle; on a scan its dashes end there. One of the two dashes is led through to the other, which gives way by a gap,
 * so that the row goes on as evenly as elsewhere.
 */
final class PortMarks {

    private static final double LONGEST = 40;
    private static final double NEAR_PX = 3;

    /** Dashes led on to a place along them, and dashes that end before one. */
    private final Map<Line, double[]> ends = new IdentityHashMap<>();

    PortMarks(List<Rounds.Curve> curves, Collection<Line> lines) {
        List<Line> dashes = lines.stream()
                .filter(l -> l.span() < LONGEST * l.width && l.span() > 2)
                .toList();
        for (Rounds.Curve c : curves) {
            Round r = c.closed() ? c.pieces().get(0).round : null;
            if (r != null && !dashes.isEmpty() && r.r() < 0.5 * LONGEST * dashes.get(0).width) {
                List<Line> here = dashes.stream().filter(l -> endsAt(l, r)).toList();
                pairUp(r, here, dashes);
            }
        }
    }

    /** Radially at the circle, from outside. */
    private static boolean endsAt(Line l, Round r) {
        double near = Math.min(distance(l.end(false), r), distance(l.end(true), r));
        double far = Math.max(distance(l.end(false), r), distance(l.end(true), r));
        return l.straight.aside(r.x(), r.y()) < NEAR_PX
                && near > r.r() - NEAR_PX - 2
                && near < r.r() + NEAR_PX
                && far > near + 2;
    }

    private static double distance(double[] p, Round r) {
        return Math.hypot(p[0] - r.x(), p[1] - r.y());
    }

    private void pairUp(Round r, List<Line> here, List<Line> dashes) {
        for (Line a : here) {
            for (Line b : here) {
                double along = a.straight.dx() * b.straight.dx() + a.straight.dy() * b.straight.dy();
                double[] am = middle(a);
                double[] bm = middle(b);
                boolean opposite = (am[0] - r.x()) * (bm[0] - r.x()) + (am[1] - r.y()) * (bm[1] - r.y()) < 0;
                boolean first = a.span() > b.span() || a.span() == b.span() && am[0] + am[1] < bm[0] + bm[1];
                if (a != b
                        && Math.abs(along) > 0.99
                        && opposite
                        && first
                        && !ends.containsKey(a)
                        && !ends.containsKey(b)) {
                    lead(r, a, b, gap(a, dashes));
                }
            }
        }
    }

    private static double[] middle(Line l) {
        double[] a = l.end(false);
        double[] b = l.end(true);
        return new double[] {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2};
    }

    /** From the far end of a dash to the next one in its row. */
    private static double gap(Line l, List<Line> dashes) {
        double least = l.span();
        for (Line o : dashes) {
            double[] m = middle(o);
            if (o != l && l.straight.aside(m[0], m[1]) < NEAR_PX) {
                double[] own = middle(l);
                double gap = Math.hypot(m[0] - own[0], m[1] - own[1]) - (l.span() + o.span()) / 2;
                least = gap > 2 ? Math.min(least, gap) : least;
            }
        }
        return least;
    }

    /** The shorter dash b goes on to where a ends; a, the longer one, ends a gap before that. */
    private void lead(Round r, Line a, Line b, double gapPx) {
        double ta = nearer(a, r);
        double[] reach = a.at(ta);
        double shortened = a.straight.along(r.x(), r.y()) > ta ? ta - gapPx : ta + gapPx;
        ends.put(a, new double[] {ta, shortened});
        ends.put(b, new double[] {nearer(b, r), b.straight.along(reach[0], reach[1])});
    }

    private static double nearer(Line l, Round r) {
        double[] a = l.end(false);
        double[] b = l.end(true);
        return distance(a, r) < distance(b, r) ? l.straight.along(a[0], a[1]) : l.straight.along(b[0], b[1]);
    }

    /** The line's stretches, with the end at a circle moved. */
    List<List<double[]>> through(Line l, List<List<double[]>> stretches) {
        double[] move = ends.get(l);
        if (move == null) {
            return stretches;
        }
        double[] from = l.at(move[0]);
        List<List<double[]>> out = new ArrayList<>();
        for (List<double[]> s : stretches) {
            out.add(s.stream()
                    .map(p -> Math.hypot(p[0] - from[0], p[1] - from[1]) < NEAR_PX ? l.at(move[1]) : p)
                    .toList());
        }
        return out;
    }
}
