package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Near;

/**
 * Lines that go on through the ink of others. Where a line runs along a circle's side, into a dot or across a thick line,
 * thinning leaves nothing of it; two ends that face each other in one straight line with nothing but ink between them are
 * one line.
 */
final class Onward {

    /** Longest stretch that other ink may swallow, in widths of the line. */
    private static final double LONGEST = 9;

    private final Gauge gauge;
    private final Upright upright;
    private final Map<Piece, Line> lineOf;
    private final Map<Line, Line> united = new IdentityHashMap<>();

    private record End(Line line, double[] at, double dx, double dy) {}

    Onward(Map<Piece, Line> lineOf, Gauge gauge, Upright upright) {
        this.lineOf = lineOf;
        this.gauge = gauge;
        this.upright = upright;
    }

    /** @param lines those that prove to be parts of one are made one */
    void join(Collection<Line> lines) {
        List<End> ends = new ArrayList<>();
        for (Line l : lines) {
            ends.add(new End(l, l.end(false), -l.straight.dx(), -l.straight.dy()));
            ends.add(new End(l, l.end(true), l.straight.dx(), l.straight.dy()));
        }
        Near<End> near = new Near<>(ends, e -> Box.around(new Point(e.at[0], e.at[1])));
        Set<End> done = Collections.newSetFromMap(new IdentityHashMap<>());
        for (End e : ends) {
            End best = null;
            double least = Double.MAX_VALUE;
            for (End o : near.within(new Point(e.at[0], e.at[1]), LONGEST * e.line.width)) {
                double gap = Math.hypot(o.at[0] - e.at[0], o.at[1] - e.at[1]);
                if (!done.contains(o) && gap < least && faces(e, o, gap)) {
                    least = gap;
                    best = o;
                }
            }
            if (best != null && !done.contains(e)) {
                done.add(e);
                done.add(best);
                unite(now(e.line), now(best.line), lines);
            }
        }
    }

    private boolean faces(End e, End o, double gap) {
        double wide = Math.max(e.line.width, o.line.width);
        double ahead = (o.at[0] - e.at[0]) * e.dx + (o.at[1] - e.at[1]) * e.dy;
        double shorter = Math.min(e.line.span(), o.line.span());
        double turn = Math.abs(e.dx * o.dy - e.dy * o.dx);
        double[] m = DashRows.middle(e.line);
        double[] n = DashRows.middle(o.line);
        double off = Math.max(e.line.straight.aside(o.at[0], o.at[1]), o.line.straight.aside(e.at[0], e.at[1]));
        double offMiddle =
                e.line.span() > o.line.span() ? e.line.straight.aside(n[0], n[1]) : o.line.straight.aside(m[0], m[1]);
        return now(e.line) != now(o.line)
                && e.dx * o.dx + e.dy * o.dy < -0.9
                && turn < Math.min(0.3, 0.03 + 2 / shorter)
                && ahead > -0.6 * wide
                && Math.max(off, offMiddle) < 1 + 0.25 * wide
                && shorter > 0.6 * wide
                && Math.abs(e.line.width - o.line.width) < 0.15 * wide + unsure(shorter / wide)
                && !penChanges(e.line, o.line)
                && inked(e.at, o.at, gap);
    }

    /** How little is known of the width of a piece so many times longer than wide, in pixels. */
    private static double unsure(double lengths) {
        return lengths < 3 ? 3 : lengths < 8 ? 1.2 : 0.6;
    }

    /** Where two alone meet in one straight line, they were parted because the pen changes. */
    private static boolean penChanges(Line a, Line b) {
        return a.pieces.stream()
                .flatMap(p -> Stream.of(p.a, p.b))
                .anyMatch(j -> j.pieces.size() == 2 && j.pieces.stream().anyMatch(b.pieces::contains));
    }

    private boolean inked(double[] a, double[] b, double gap) {
        int n = (int) Math.ceil(gap);
        for (int i = 0; i <= n; i++) {
            double t = n == 0 ? 0 : (double) i / n;
            if (!gauge.ink(upright, a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]))) {
                return false;
            }
        }
        return true;
    }

    private Line now(Line l) {
        Line now = l;
        while (united.containsKey(now)) {
            now = united.get(now);
        }
        return now;
    }

    private void unite(Line a, Line b, Collection<Line> lines) {
        if (a == b) {
            return;
        }
        double length = a.span() + b.span();
        a.width = (a.width * a.span() + b.width * b.span()) / length;
        united.put(b, a);
        a.pieces.addAll(b.pieces);
        b.pieces.forEach(p -> lineOf.put(p, a));
        lines.remove(b);
        a.fit();
    }
}
