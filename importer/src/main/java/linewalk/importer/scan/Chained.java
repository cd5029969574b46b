package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Rows of one dashed line put together: where a port's circle or a join dot stands between two that face each other, and
 * around corners, where the pattern of a short side follows from the sides that it meets.
 */
final class Chained {

    /** What may stand between two rows is at most this long, in dashes. */
    private static final double WIDEST = 2.5;

    /** What is measured of one pen on two sides, in pixels: few dashes are measured badly. */
    private static final double ONE_PEN = 1.2;

    /** The same in widths for chain lines, which hardly ever meet but around a corner of one outline. */
    private static final double CHAIN = 0.5;

    private final Collection<Line> lines;
    private final List<Rounds.Curve> curves;
    private final List<Solid> solids;
    private final Blank blank;

    private Chained(Collection<Line> lines, List<Rounds.Curve> curves, List<Solid> solids, Blank blank) {
        this.blank = blank;
        this.lines = lines;
        this.curves = curves;
        this.solids = solids;
    }

    /** @param lines that are not dashed */
    static List<DashRow> joined(
            List<DashRow> rows, Collection<Line> lines, List<Rounds.Curve> curves, List<Solid> solids, Blank blank) {
        Chained c = new Chained(lines, curves, solids, blank);
        List<DashRow> out = new ArrayList<>(rows);
        for (int i = 0; i < out.size(); i++) {
            for (int k = i + 1; k < out.size(); k++) {
                if (c.goesOn(out.get(i), out.get(k), out)) {
                    out.set(i, out.get(i).with(out.remove(k)));
                    k = i;
                }
            }
        }
        return onePen(out.stream().map(r -> chainLike(r, out)).toList());
    }

    private boolean goesOn(DashRow a, DashRow b, List<DashRow> rows) {
        double on = Math.max(a.onPx(), b.onPx());
        boolean onePen = Math.abs(a.width() - b.width()) < 0.35 * a.width() + 0.5;
        double along = Math.abs(a.straight().dx() * b.straight().dx()
                + a.straight().dy() * b.straight().dy());
        if (!onePen || along < 0.99 || a.chain() != b.chain()) {
            return false;
        }
        double[][] ends = facing(a, b);
        double gap = Math.hypot(ends[0][0] - ends[1][0], ends[0][1] - ends[1][1]);
        double aside = a.straight().aside(ends[1][0], ends[1][1]);
        return aside < 1.5 + 0.4 * a.width()
                && (outline(a, b, ends, gap)
                        || lost(a, b, gap)
                        || hidden(a, b, ends)
                        || gap < WIDEST * on && filled(ends)
                        || crossed(a, b, ends, gap, rows));
    }

    /** A chain line is no pipe: whatever stands on an outline's side, the side goes on behind it. */
    private boolean outline(DashRow a, DashRow b, double[][] ends, double gap) {
        double on = Math.max(a.onPx(), b.onPx());
        double off = Math.max(a.gapPx(), b.gapPx());
        return a.chain() && (gap < on + 2.3 * off || twoRagged(a, ends, on, off, gap));
    }

    /** Two dashes lie there whose ink is too ragged, or too faint, for this row. */
    private boolean twoRagged(DashRow a, double[][] ends, double on, double off, double gap) {
        return gap < 2 * on + 3.4 * off && paper(a, ends) < 3.4 * off;
    }

    /** A dash stands between them that was taken for something else: there is no more paper than two gaps have. */
    private boolean hidden(DashRow a, DashRow b, double[][] ends) {
        double usual = (a.gapPx() + b.gapPx()) / 2;
        double paper = paper(a, ends);
        return Math.hypot(ends[0][0] - ends[1][0], ends[0][1] - ends[1][1])
                        < 1.3 * Math.max(a.onPx(), b.onPx()) + 2.6 * usual
                && paper > 1.4 * usual
                && paper < 2.6 * usual;
    }

    private double paper(DashRow a, double[][] ends) {
        double from = a.straight().along(ends[0][0], ends[0][1]);
        double to = a.straight().along(ends[1][0], ends[1][1]);
        return blank.px(a.straight(), from, to);
    }

    /** Hardly further apart than dashes are. */
    private static boolean lost(DashRow a, DashRow b, double gap) {
        double usual = (a.gapPx() + b.gapPx()) / 2;
        return gap < 1.3 * usual + 2 && gap > 0.4 * usual;
    }

    /** A dash lies under a line that crosses, dashed or not; hardly more of it is to be seen than the line is wide. */
    private boolean crossed(DashRow a, DashRow b, double[][] ends, double gap, List<DashRow> rows) {
        double on = Math.max(a.onPx(), b.onPx());
        double off = Math.max(a.gapPx(), b.gapPx());
        boolean one = gap < on + 2.3 * off;
        if (!one && !twoRagged(a, ends, on, off, gap)) {
            return false;
        }
        return lines.stream().anyMatch(l -> {
                    double[] x = a.straight().crossing(l.straight);
                    return x != null && l.spans(x[0], x[1]) && between(x, ends, gap + l.width);
                })
                || rows.stream().filter(r -> r != a && r != b).anyMatch(r -> {
                    double[] x = a.straight().crossing(r.straight());
                    return x != null && spans(r, x) && between(x, ends, gap + r.width());
                });
    }

    private static boolean between(double[] x, double[][] ends, double reach) {
        return Math.hypot(x[0] - ends[0][0], x[1] - ends[0][1]) < reach
                && Math.hypot(x[0] - ends[1][0], x[1] - ends[1][1]) < reach;
    }

    /** Its dashes lie on both sides, or it is cut there too. */
    private static boolean spans(DashRow r, double[] x) {
        double slack = r.onPx() + r.gapPx();
        double t = r.straight().along(x[0], x[1]);
        return t > r.end(false) - slack && t < r.end(true) + slack;
    }

    private static double[][] facing(DashRow a, DashRow b) {
        double[][] best = null;
        double least = Double.MAX_VALUE;
        for (boolean i : new boolean[] {false, true}) {
            for (boolean k : new boolean[] {false, true}) {
                double[] p = a.at(a.end(i));
                double[] q = b.at(b.end(k));
                double d = Math.hypot(p[0] - q[0], p[1] - q[1]);
                if (d < least) {
                    least = d;
                    best = new double[][] {p, q};
                }
            }
        }
        return best;
    }

    /** A small circle or a dot between the ends. */
    private boolean filled(double[][] ends) {
        double mx = (ends[0][0] + ends[1][0]) / 2;
        double my = (ends[0][1] + ends[1][1]) / 2;
        double gap = Math.hypot(ends[0][0] - ends[1][0], ends[0][1] - ends[1][1]);
        boolean circle = curves.stream()
                .filter(Rounds.Curve::closed)
                .map(c -> c.round())
                .anyMatch(r -> Math.hypot(r.x() - mx, r.y() - my) < 0.35 * gap && r.r() < gap);
        return circle
                || solids.stream()
                        .filter(Solid::dot)
                        .anyMatch(s -> Math.hypot(s.middle()[0] - mx, s.middle()[1] - my) < 0.35 * gap);
    }

    /** A side of a chain outline may be too short to show its pattern. */
    private static DashRow chainLike(DashRow row, List<DashRow> all) {
        if (row.chain() || row.dashes().size() > 4) {
            return row;
        }
        DashRow first = null;
        for (boolean far : new boolean[] {false, true}) {
            double[] end = row.at(row.end(far));
            DashRow met = all.stream()
                    .filter(o -> o.chain() && o != row && meets(row, o, end))
                    .findFirst()
                    .orElse(null);
            if (met == null) {
                return row;
            }
            first = met;
        }
        return new DashRow(row.dashes(), row.straight(), Math.max(row.gapPx(), first.gapPx()), true);
    }

    /** Around corners the pen stays the same: all rows that meet tell it together, each by its length. */
    private static List<DashRow> onePen(List<DashRow> rows) {
        List<DashRow> out = new ArrayList<>(rows);
        boolean[] seen = new boolean[rows.size()];
        for (int i = 0; i < rows.size(); i++) {
            List<Integer> group = seen[i] ? List.of() : group(rows, i, seen);
            double length = 0;
            double sum = 0;
            for (int k : group) {
                double own =
                        rows.get(k).dashes().stream().mapToDouble(Line::span).sum();
                length += own;
                sum += own * rows.get(k).width();
            }
            for (int k : group) {
                DashRow r = rows.get(k);
                out.set(k, new DashRow(r.dashes(), r.straight(), r.gapPx(), r.chain(), sum / length));
            }
        }
        return out;
    }

    private static List<Integer> group(List<DashRow> rows, int start, boolean[] seen) {
        List<Integer> group = new ArrayList<>(List.of(start));
        seen[start] = true;
        for (int i = 0; i < group.size(); i++) {
            DashRow row = rows.get(group.get(i));
            for (int k = 0; k < rows.size(); k++) {
                DashRow o = rows.get(k);
                double apart = Math.abs(o.width() - row.width());
                double most = o.chain() ? Math.max(ONE_PEN, CHAIN * Math.max(o.width(), row.width())) : ONE_PEN;
                boolean onePen = o.chain() == row.chain() && apart < most;
                if (!seen[k]
                        && onePen
                        && (meets(row, o, row.at(row.end(false))) || meets(row, o, row.at(row.end(true))))) {
                    seen[k] = true;
                    group.add(k);
                }
            }
        }
        return group;
    }

    private static boolean meets(DashRow row, DashRow o, double[] end) {
        double reach = 1.5 * Math.max(row.gapPx(), o.gapPx()) + 2 * row.width();
        double across = Math.abs(row.straight().dx() * o.straight().dx()
                + row.straight().dy() * o.straight().dy());
        for (boolean far : new boolean[] {false, true}) {
            double[] e = o.at(o.end(far));
            if (across < 0.3 && Math.hypot(e[0] - end[0], e[1] - end[1]) < reach) {
                return true;
            }
        }
        return false;
    }
}
