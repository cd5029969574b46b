package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** A dashed line is broken for its label: the single dash that is left beyond the label is a row too. */
final class BeyondText {

    private final Set<Line> taken = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Collection<Line> lines;
    private final TextPlaces text;

    private BeyondText(Collection<Line> lines, TextPlaces text) {
        this.lines = lines;
        this.text = text;
    }

    /** @param lines of which some are dashes of rows */
    static List<DashRow> of(List<DashRow> rows, Collection<Line> lines, TextPlaces text) {
        BeyondText b = new BeyondText(lines, text);
        rows.forEach(r -> b.taken.addAll(r.dashes()));
        List<DashRow> found = new ArrayList<>();
        for (DashRow r : rows) {
            for (boolean far : new boolean[] {false, true}) {
                DashRow one = r.dashes().size() > 1 ? b.beyond(r, far) : null;
                if (one != null) {
                    found.add(one);
                    b.taken.addAll(one.dashes());
                }
            }
        }
        return found;
    }

    private DashRow beyond(DashRow row, boolean far) {
        double sign = far ? 1 : -1;
        double reach = row.onPx() + 2 * row.gapPx();
        double start = row.end(far);
        double behind = behindText(row, start, sign, reach);
        if (Double.isNaN(behind)) {
            return null;
        }
        for (Line l : lines) {
            double[] a = l.end(false);
            double[] b = l.end(true);
            double ta = sign * (row.straight().along(a[0], a[1]) - behind);
            double tb = sign * (row.straight().along(b[0], b[1]) - behind);
            if (Math.min(ta, tb) > -row.width()
                    && Math.min(ta, tb) < reach
                    && l.span() < 1.25 * row.onPx() + 3
                    && l.loose()
                    && !taken.contains(l)
                    && likeIn(row, l)) {
                return new DashRow(List.of(l), row.straight(), row.gapPx(), row.chain());
            }
        }
        return null;
    }

    private static boolean likeIn(DashRow row, Line l) {
        double slack = 1.5 + 0.4 * row.width();
        double[] a = l.end(false);
        double[] b = l.end(true);
        return Math.abs(l.width - row.width()) < 0.35 * row.width() + 0.5
                && row.straight().aside(a[0], a[1]) < slack
                && row.straight().aside(b[0], b[1]) < slack;
    }

    /** Where the row, led on, leaves the text that stands next on its way; NaN where none does. */
    private double behindText(DashRow row, double start, double sign, double reach) {
        double t = start;
        while (sign * (t - start) < reach && !within(row, t)) {
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
