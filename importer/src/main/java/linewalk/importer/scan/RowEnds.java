package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** A dashed line goes on over its last gap to what it points at: a line, a circle, a filled shape or a row's corner. */
final class RowEnds {

    /** How far, in gaps. */
    private static final double REACH = 1.4;

    private final Collection<Line> lines;
    private final List<DashRow> rows;
    private final List<Rounds.Curve> curves;
    private final List<Solid> solids;
    private final BowTies ties;
    private final Blank blank;

    /** @param blank of the whole page, also where lettering was read */
    RowEnds(
            Collection<Line> lines,
            List<DashRow> rows,
            List<Rounds.Curve> curves,
            List<Solid> solids,
            BowTies ties,
            Blank blank) {
        this.blank = blank;
        this.ties = ties;
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
        return ahead(row, sign).stream()
                .filter(t -> sign * (t - at) > -row.width() && sign * (t - at) < most + row.onPx())
                // the rest is a dash that a corner, a dot or a tip hides
                .filter(t -> blank.px(row.straight(), at, t) < most)
                .min((a, b) -> Double.compare(sign * a, sign * b))
                .orElseGet(() -> lostCorner(row, far));
    }

    /** Where along the row, on whichever side of it, something lies that it could end at. */
    private List<Double> ahead(DashRow row, double sign) {
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
            if (s.outline().size() > 3 && row.straight().aside(m[0], m[1]) < row.width()) {
                ahead.add(row.straight().along(m[0], m[1]));
            }
        }
        for (Solid s : solids) {
            if (s.outline().size() == 3
                    && (ties.has(s) || ahead.stream().map(row::at).noneMatch(p -> s.covers(p[0], p[1])))) {
                sides(row, s, ahead);
            }
        }
        return ahead;
    }

    private static void sides(DashRow row, Solid s, List<Double> ahead) {
        for (int i = 0; i < s.outline().size(); i++) {
            double[] a = s.outline().get(i);
            double[] b = s.outline().get((i + 1) % s.outline().size());
            double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
            if (length > 0) {
                Straight side = new Straight(a[0], a[1], (b[0] - a[0]) / length, (b[1] - a[1]) / length);
                meeting(row, side, 0, length, 0, ahead);
            }
        }
    }

    /** A corner drawn as one dash is in neither row, or looks like a letter: there is ink where both, led on, would meet. */
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
            double end = Math.abs(u - r.end(false)) < Math.abs(u - r.end(true)) ? r.end(false) : r.end(true);
            boolean near = sign * (t - at) > 0 && sign * (t - at) < most && Math.abs(u - end) < most;
            if (near
                    && Math.abs(r.width() - row.width()) < 1.5
                    && blank.px(row.straight(), at, t) < REACH * row.gapPx()
                    && blank.px(r.straight(), end, u) < REACH * r.gapPx()
                    && blank.inked(x)) {
                return t;
            }
        }
        return at;
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
