package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** A dashed line goes on over its last gap to what it points at: a line, a circle, a filled shape or a row's corner. */
final class RowEnds {

    /** How far, in gaps. */
    private static final double REACH = 1.4;

    private static final double INKED = 0.5;

    private final Collection<Line> lines;
    private final List<DashRow> rows;
    private final List<Rounds.Curve> curves;
    private final List<Solid> solids;
    private final Gauge ink;
    private final Upright upright;

    /** @param ink all of the page, also what was taken for lettering */
    RowEnds(
            Collection<Line> lines,
            List<DashRow> rows,
            List<Rounds.Curve> curves,
            List<Solid> solids,
            Gauge ink,
            Upright upright) {
        this.ink = ink;
        this.upright = upright;
        this.lines = lines;
        this.rows = rows;
        this.curves = curves;
        this.solids = solids;
    }

    /** Both ends of the row, in registered pixels. */
    List<double[]> of(DashRow row) {
        return List.of(row.at(end(row, false)), row.at(end(row, true)));
    }

    private double end(DashRow row, boolean far) {
        double at = row.end(far);
        double sign = far ? 1 : -1;
        double most = REACH * row.gapPx() + row.width();
        List<Double> ahead = new ArrayList<>();
        for (Line l : lines) {
            meeting(
                    row,
                    l.straight,
                    l.straight.along(l.end(false)[0], l.end(false)[1]),
                    l.straight.along(l.end(true)[0], l.end(true)[1]),
                    0.6 * l.width + 1,
                    ahead);
        }
        for (DashRow r : rows) {
            if (r != row) {
                meeting(row, r.straight(), r.end(false), r.end(true), REACH * r.gapPx() + r.width(), ahead);
            }
        }
        for (Rounds.Curve c : curves) {
            Round r = c.closed() ? c.round() : null;
            double aside = r == null ? 1 : row.straight().aside(r.x(), r.y());
            if (r != null && aside < r.r()) {
                double half = Math.sqrt(r.r() * r.r() - aside * aside);
                ahead.add(row.straight().along(r.x(), r.y()) - sign * half);
            }
        }
        for (Solid s : solids) {
            double[] m = s.middle();
            if (s.dot() && row.straight().aside(m[0], m[1]) < row.width()) {
                ahead.add(row.straight().along(m[0], m[1]));
            }
        }
        double slack = row.width();
        return ahead.stream()
                .filter(t -> sign * (t - at) > -slack && sign * (t - at) < most)
                .min((a, b) -> Double.compare(sign * a, sign * b))
                .orElseGet(() -> lostCorner(row, far));
    }

    /** A corner drawn as one dash may look like a letter: there is ink where both rows, led on, would meet. */
    private double lostCorner(DashRow row, boolean far) {
        double at = row.end(far);
        double sign = far ? 1 : -1;
        double most = row.onPx() + 2 * row.gapPx();
        for (DashRow r : rows) {
            double[] x = r == row ? null : row.straight().crossing(r.straight());
            if (x == null) {
                continue;
            }
            double t = row.straight().along(x[0], x[1]);
            double u = r.straight().along(x[0], x[1]);
            double other = Math.min(Math.abs(u - r.end(false)), Math.abs(u - r.end(true)));
            boolean near = sign * (t - at) > 0 && sign * (t - at) < most && other < most;
            if (near && Math.abs(r.width() - row.width()) < 1.5 && inked(row, t, t - sign * row.onPx() / 2) > INKED) {
                return t;
            }
        }
        return at;
    }

    private double inked(DashRow row, double from, double to) {
        int seen = 0;
        int n = 12;
        for (int i = 0; i < n; i++) {
            double[] p = row.at(from + (to - from) * (i + 0.5) / n);
            seen += ink.ink(upright, p[0], p[1]) ? 1 : 0;
        }
        return (double) seen / n;
    }

    private static void meeting(DashRow row, Straight s, double from, double to, double slack, List<Double> ahead) {
        double[] x = row.straight().crossing(s);
        if (x != null) {
            double t = s.along(x[0], x[1]);
            if (t > from - slack && t < to + slack) {
                ahead.add(row.straight().along(x[0], x[1]));
            }
        }
    }
}
