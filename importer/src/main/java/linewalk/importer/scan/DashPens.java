package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Box;
import linewalk.importer.page.Near;

/** Short lines in a row were drawn by one pen: dashes alone are too short to tell its width. */
final class DashPens {

    /** Longest dash and gap, in widths. */
    private static final double LONGEST = 40;

    private static final double GAP = 1.2;
    private static final double ASIDE_PX = 2;
    private static final double ALONG = 0.995;

    private final Map<Line, List<Line>> rows = new IdentityHashMap<>();

    private DashPens() {}

    /** Gives the short lines of a row, and rows that meet at a corner by themselves, their middle width. */
    static void even(Collection<Line> lines) {
        DashPens pens = new DashPens();
        List<Line> dashes =
                lines.stream().filter(l -> l.length() < LONGEST * l.width).toList();
        dashes.forEach(l -> pens.rows.put(l, new ArrayList<>(List.of(l))));
        Near<Line> near = new Near<>(dashes, DashPens::box);
        for (Line l : dashes) {
            double reach = GAP * l.length() + 4;
            for (Line o : near.touching(box(l).grow(reach))) {
                if (o != l && pens.rows.get(o) != pens.rows.get(l) && inRow(l, o)) {
                    List<Line> into = pens.rows.get(l);
                    List<Line> from = pens.rows.get(o);
                    into.addAll(from);
                    from.forEach(x -> pens.rows.put(x, into));
                }
            }
        }
        for (Line l : dashes) {
            List<Line> row = pens.rows.get(l);
            if (row.size() > 1 && row.get(0) == l) {
                double[] widths =
                        row.stream().mapToDouble(x -> x.width).sorted().toArray();
                row.forEach(x -> x.width = widths[widths.length / 2]);
            }
        }
    }

    private static Box box(Line l) {
        double[] a = l.end(false);
        double[] b = l.end(true);
        return new Box(Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[0], b[0]), Math.max(a[1], b[1]));
    }

    private static boolean inRow(Line a, Line b) {
        double[] from = b.end(false);
        double[] to = b.end(true);
        double mx = (from[0] + to[0]) / 2;
        double my = (from[1] + to[1]) / 2;
        Line longer = a.length() > b.length() ? a : b;
        Line shorter = longer == a ? b : a;
        double[] p = shorter.end(false);
        double[] q = shorter.end(true);
        double aside = longer.straight.aside((p[0] + q[0]) / 2, (p[1] + q[1]) / 2);
        double along = Math.abs(a.straight.dx() * b.straight.dx() + a.straight.dy() * b.straight.dy());
        double[] start = a.end(false);
        double[] end = a.end(true);
        double apart = Math.hypot(mx - (start[0] + end[0]) / 2, my - (start[1] + end[1]) / 2);
        double gap = apart - (a.span() + b.span()) / 2;
        return along > ALONG - 0.02 * Math.min(1, 12 / shorter.span())
                && aside < ASIDE_PX
                && gap < GAP * Math.max(a.span(), b.span())
                && gap > 0;
    }
}
