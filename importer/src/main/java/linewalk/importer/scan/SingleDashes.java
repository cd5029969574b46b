package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** One dash alone is a row too where it goes on from another row: beyond the label that the row is broken for, or around a corner. */
final class SingleDashes {

    /** Least sine of a corner. */
    private static final double CORNER = 0.9;

    /** How wide the gap at a corner may be, in gaps of the row. */
    private static final double GAP = 1.4;

    /** A shorter piece of a chain line is its dot: it leads nowhere. */
    private static final double DOT = 0.5;

    /** Where a corner has no more ink, in widths. */
    private static final double BEYOND = 3;

    private final Set<Line> taken = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Collection<Line> lines;
    private final TextPlaces text;
    private final Blank blank;

    private SingleDashes(Collection<Line> lines, TextPlaces text, Blank blank) {
        this.lines = lines;
        this.text = text;
        this.blank = blank;
    }

    /**
     * @param lines of which some are dashes of rows
     * @param blank of the whole page, also where lettering was read
     */
    static List<DashRow> of(List<DashRow> rows, Collection<Line> lines, TextPlaces text, Blank blank) {
        SingleDashes singles = new SingleDashes(lines, text, blank);
        rows.forEach(r -> singles.taken.addAll(r.dashes()));
        List<DashRow> found = new ArrayList<>();
        for (DashRow r : rows) {
            for (boolean far : new boolean[] {false, true}) {
                Line dash = r.dashes().size() > 1 ? singles.after(r, far) : null;
                if (dash != null) {
                    boolean straightOn = dash.straight.sine(r.straight()) < CORNER;
                    found.add(new DashRow(
                            List.of(dash), straightOn ? r.straight() : dash.straight, r.gapPx(), r.chain()));
                    singles.taken.add(dash);
                }
            }
        }
        return found;
    }

    private Line after(DashRow row, boolean far) {
        double sign = far ? 1 : -1;
        double behind = behindText(row, row.end(far), sign);
        double[] end = row.at(row.end(far));
        return lines.stream()
                .filter(l -> l.span() < 1.25 * row.onPx() + 3 && !taken.contains(l) && onePen(row, l))
                .filter(l -> !row.chain() || l.span() > DOT * row.onPx())
                .filter(l ->
                        l.loose() ? straightOn(row, l, behind, sign) || corner(row, l, end) : lostCorner(row, l, end))
                .findFirst()
                .orElse(null);
    }

    private static boolean onePen(DashRow row, Line l) {
        return Math.abs(l.width - row.width()) < 0.35 * row.width() + 0.5;
    }

    private static boolean straightOn(DashRow row, Line l, double behind, double sign) {
        double slack = 1.5 + 0.4 * row.width();
        double least = Double.MAX_VALUE;
        for (boolean far : new boolean[] {false, true}) {
            double[] e = l.end(far);
            if (row.straight().aside(e[0], e[1]) > slack) {
                return false;
            }
            least = Math.min(least, sign * (row.straight().along(e[0], e[1]) - behind));
        }
        return least > -row.width() && least < reach(row);
    }

    private static boolean corner(DashRow row, Line l, double[] end) {
        double most = GAP * row.gapPx() + row.width();
        double[] x = row.straight().crossing(l.straight);
        if (x == null || row.straight().sine(l.straight) < CORNER || Math.hypot(x[0] - end[0], x[1] - end[1]) > most) {
            return false;
        }
        double[] a = l.end(false);
        double[] b = l.end(true);
        double one = Math.hypot(a[0] - x[0], a[1] - x[1]);
        double other = Math.hypot(b[0] - x[0], b[1] - x[1]);
        return Math.min(one, other) < most && Math.max(one, other) > l.span() - row.width();
    }

    /** Around a corner hardly longer than its pen, to what the dash touches: there is ink where row and dash would meet. */
    private boolean lostCorner(DashRow row, Line l, double[] end) {
        double[] x = row.straight().crossing(l.straight);
        boolean bit = l.span() < DOT * row.onPx();
        if (bit || row.chain() || x == null || row.straight().sine(l.straight) < CORNER || !blank.inked(x)) {
            return false;
        }
        double[] near = l.end(distance(l.end(true), x) < distance(l.end(false), x));
        return distance(end, x) < reach(row)
                && distance(near, x) < reach(row)
                && !goesBy(l, x)
                && paper(row.straight(), end, x) < GAP * row.gapPx()
                && paper(l.straight, near, x) < GAP * row.gapPx();
    }

    /** What has ink beyond the meeting too is a side that the row ends at. */
    private boolean goesBy(Line l, double[] x) {
        double[] far = l.end(distance(l.end(true), x) > distance(l.end(false), x));
        double length = distance(far, x);
        double on = BEYOND * l.width;
        return length > 0
                && blank.inked(
                        new double[] {x[0] + on * (x[0] - far[0]) / length, x[1] + on * (x[1] - far[1]) / length});
    }

    private double paper(Straight way, double[] from, double[] to) {
        return blank.px(way, way.along(from[0], from[1]), way.along(to[0], to[1]));
    }

    private static double distance(double[] a, double[] b) {
        return Math.hypot(a[0] - b[0], a[1] - b[1]);
    }

    private static double reach(DashRow row) {
        return row.onPx() + 2 * row.gapPx();
    }

    /** Where the row, led on, leaves the text that stands next on its way; NaN where none does. */
    private double behindText(DashRow row, double start, double sign) {
        double t = start;
        while (sign * (t - start) < reach(row) && !within(row, t)) {
            t += sign;
        }
        if (!within(row, t)) {
            return Double.NaN;
        }
        while (within(row, t)) {
            t += sign;
        }
        return t;
    }

    private boolean within(DashRow row, double t) {
        double[] p = row.at(t);
        return text.at(p[0], p[1]);
    }
}
