package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.importer.page.Near;

/**
 * Short lines that follow one another with even gaps are a dashed line. A scan shows neither equal lengths nor equal pens,
 * so what counts is that middles lie in one straight line and that gaps are alike; a gap may be wider where the port's
 * circle or a join dot stands in it.
 */
final class DashRows {

    /** Longest dash, in widths. */
    private static final double LONGEST = 40;

    /** Longest gap, in lengths of the longer dash beside it. */
    private static final double GAP = 1.25;

    private static final double EVEN = 0.45;
    private static final int DASHES = 3;

    /** A dash longer than this, in widths, may be a line between two symbols. */
    private static final double LONG = 12;

    /** How far from a bar's middle its stem may stand, in lengths. */
    private static final double STEM = 0.2;

    private final Gauge gauge;
    private final Upright upright;
    private final List<Rounds.Curve> circles;
    private final Map<Line, Line[]> next = new IdentityHashMap<>();

    private DashRows(Gauge gauge, Upright upright, List<Rounds.Curve> circles) {
        this.gauge = gauge;
        this.upright = upright;
        this.circles = circles;
    }

    /** @param circles closed curves of which small ones may interrupt a row */
    static List<DashRow> of(Collection<Line> lines, Gauge gauge, Upright upright, List<Rounds.Curve> circles) {
        List<Line> dashes = lines.stream()
                .filter(l -> l.span() < LONGEST * l.width && l.span() > 0.8 * l.width)
                .toList();
        return new DashRows(gauge, upright, circles).rows(dashes);
    }

    private List<DashRow> rows(List<Line> dashes) {
        Near<Line> near = new Near<>(dashes, DashRows::box);
        for (Line l : dashes) {
            next.put(l, new Line[] {follower(l, false, near), follower(l, true, near)});
        }
        List<DashRow> rows = new ArrayList<>();
        List<List<Line>> pairs = new ArrayList<>();
        Set<Line> seen = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
        for (Line l : dashes) {
            if (seen.add(l)) {
                for (List<Line> even : parts(sequence(l, seen))) {
                    if (even.stream().allMatch(DashRows::stemmed) || interrupted(even)) {
                        continue;
                    } else if (even.size() >= DASHES) {
                        rows.add(row(even));
                    } else if (even.size() > 1) {
                        pairs.add(even);
                    }
                }
            }
        }
        List<DashRow> known = List.copyOf(rows);
        for (List<Line> two : pairs) {
            DashRow row = row(two);
            if (known.stream().anyMatch(r -> r.like(row))) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** Another line ends at its middle: the bar that blocks a port, and the next port's bar beside it is no second dash. */
    private static boolean stemmed(Line l) {
        double[] m = middle(l);
        return l.pieces.stream()
                .flatMap(p -> Stream.of(p.a, p.b))
                .filter(j -> Math.hypot(j.x - m[0], j.y - m[1]) < STEM * l.span())
                .anyMatch(j -> !l.pieces.containsAll(j.pieces));
    }

    private static Box box(Line l) {
        double[] a = l.end(false);
        double[] b = l.end(true);
        return new Box(Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[0], b[0]), Math.max(a[1], b[1]));
    }

    /** The nearest dash that goes on beyond one end. */
    private Line follower(Line l, boolean far, Near<Line> near) {
        Line best = null;
        double least = Double.MAX_VALUE;
        for (Line o : near.touching(box(l).grow(GAP * LONGEST * l.width / 2))) {
            double gap = o == l ? -1 : gap(l, o);
            boolean beyond = gap > 0 && beyond(l, far, o);
            if (beyond && gap < least && alike(l, o, gap)) {
                least = gap;
                best = o;
            }
        }
        return best;
    }

    private static boolean beyond(Line l, boolean far, Line o) {
        double[] m = middle(o);
        double t = l.straight.along(m[0], m[1]);
        double[] end = l.end(far);
        double at = l.straight.along(end[0], end[1]);
        return far ? t > at : t < at;
    }

    static double[] middle(Line l) {
        double[] a = l.end(false);
        double[] b = l.end(true);
        return new double[] {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2};
    }

    static double gap(Line a, Line b) {
        double[] m = middle(a);
        double[] n = middle(b);
        return Math.hypot(n[0] - m[0], n[1] - m[1]) - (a.span() + b.span()) / 2;
    }

    /** In one straight line, of about one pen, and with a gap that suits their lengths. */
    private boolean alike(Line a, Line b, double gap) {
        double longer = Math.max(a.span(), b.span());
        double thick = Math.max(a.width, b.width);
        boolean onePen = Math.abs(a.width - b.width) < 0.4 * thick + 0.5;
        boolean tooFar = gap > GAP * longer + 2 && !filled(a, b, gap);
        if (!onePen || gap < Math.max(1.5, 0.4 * thick) || tooFar) {
            return false;
        }
        double[] m = middle(a);
        double[] n = middle(b);
        double length = Math.hypot(n[0] - m[0], n[1] - m[1]);
        Straight row = new Straight(m[0], m[1], (n[0] - m[0]) / length, (n[1] - m[1]) / length);
        for (Line l : List.of(a, b)) {
            // the direction of a dash is known to a pixel or so
            double slack = Math.min(1.5 + 0.4 * thick, 1 + 0.2 * l.span());
            for (boolean far : new boolean[] {false, true}) {
                double[] e = l.end(far);
                if (row.aside(e[0], e[1]) > slack) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Long pieces of a line that symbols interrupt: at most of the gaps the ink does not simply end. */
    private static boolean interrupted(List<Line> row) {
        int free = 0;
        boolean longOnes = row.stream().anyMatch(l -> l.span() > LONG * l.width);
        for (int i = 1; i < row.size(); i++) {
            free += stops(row.get(i - 1), row.get(i)) && stops(row.get(i), row.get(i - 1)) ? 1 : 0;
        }
        return longOnes && 2 * free < row.size() - 1;
    }

    /** Towards the other the ink simply ends: a line that a symbol interrupts meets it. */
    private static boolean stops(Line l, Line other) {
        double[] m = middle(other);
        double[] near = l.end(false);
        double[] far = l.end(true);
        double[] end =
                Math.hypot(near[0] - m[0], near[1] - m[1]) < Math.hypot(far[0] - m[0], far[1] - m[1]) ? near : far;
        return l.pieces.stream()
                .flatMap(p -> Stream.of(p.a, p.b))
                .filter(j -> Math.hypot(j.x - end[0], j.y - end[1]) < l.width)
                .allMatch(j -> l.pieces.containsAll(j.pieces));
    }

    /** A small circle stands in the gap and fills most of it. */
    private boolean filled(Line a, Line b, double gap) {
        double longer = Math.max(a.span(), b.span());
        double[] m = middle(a);
        double[] n = middle(b);
        double length = Math.hypot(n[0] - m[0], n[1] - m[1]);
        Straight row = new Straight(m[0], m[1], (n[0] - m[0]) / length, (n[1] - m[1]) / length);
        for (Rounds.Curve c : circles) {
            Round r = c.round();
            double t = row.along(r.x(), r.y());
            if (c.closed() && row.aside(r.x(), r.y()) < 0.3 * r.r() && t > 0 && t < length) {
                return gap - 2 * r.r() < 2 * GAP * longer && 2 * r.r() < 3 * longer;
            }
        }
        return false;
    }

    /** All that follow one another both ways, in order. */
    private List<Line> sequence(Line start, Set<Line> seen) {
        List<Line> out = new ArrayList<>(walk(start, next.get(start)[0], seen));
        java.util.Collections.reverse(out);
        out.add(start);
        out.addAll(walk(start, next.get(start)[1], seen));
        return out;
    }

    /** Only where both are each other's nearest. */
    private List<Line> walk(Line start, Line first, Set<Line> seen) {
        List<Line> out = new ArrayList<>();
        Line before = start;
        for (Line at = first; at != null; ) {
            Line[] beside = next.get(at);
            if (beside[0] != before && beside[1] != before || !seen.add(at)) {
                break;
            }
            out.add(at);
            Line on = beside[0] == before ? beside[1] : beside[0];
            before = at;
            at = on;
        }
        return out;
    }

    private List<List<Line>> parts(List<Line> sequence) {
        return straightParts(sequence).stream()
                .flatMap(p -> evenParts(p).stream())
                .flatMap(p -> onePattern(p).stream())
                .toList();
    }

    /** Cut where it turns: dashes around a circle bend a little each. */
    private static List<List<Line>> straightParts(List<Line> sequence) {
        List<List<Line>> out = new ArrayList<>();
        List<Line> part = new ArrayList<>();
        for (Line l : sequence) {
            part.add(l);
            int n = part.size();
            if (n > 2 && bends(part.get(n - 3), part.get(n - 2), l)) {
                out.add(new ArrayList<>(part.subList(0, n - 1)));
                part = new ArrayList<>(List.of(l));
            }
        }
        out.add(part);
        return out;
    }

    private static boolean bends(Line a, Line b, Line c) {
        double[] m = middle(a);
        double[] n = middle(c);
        double length = Math.hypot(n[0] - m[0], n[1] - m[1]);
        Straight chord = new Straight(m[0], m[1], (n[0] - m[0]) / length, (n[1] - m[1]) / length);
        return chord.aside(middle(b)[0], middle(b)[1]) > 1.2 + 0.25 * b.width;
    }

    /** Cut where a gap is unlike the others, unless something stands in it. */
    private List<List<Line>> evenParts(List<Line> sequence) {
        List<List<Line>> out = new ArrayList<>();
        if (sequence.size() < 2) {
            return out;
        }
        double usual = usualGap(sequence);
        List<Line> part = new ArrayList<>(List.of(sequence.get(0)));
        for (int i = 1; i < sequence.size(); i++) {
            Line a = sequence.get(i - 1);
            Line b = sequence.get(i);
            double gap = gap(a, b);
            if (Math.abs(gap - usual) > EVEN * Math.max(gap, usual) + 2 && !filled(a, b, gap) && !dotted(a, b)) {
                out.add(part);
                part = new ArrayList<>();
            }
            part.add(b);
        }
        out.add(part);
        return out;
    }

    static double usualGap(List<Line> dashes) {
        List<Double> gaps = new ArrayList<>();
        for (int i = 1; i < dashes.size(); i++) {
            gaps.add(gap(dashes.get(i - 1), dashes.get(i)));
        }
        gaps.sort(Comparator.naturalOrder());
        return gaps.get((gaps.size() - 1) / 2);
    }

    private DashRow row(List<Line> dashes) {
        Straight.Sums sums = new Straight.Sums();
        for (Line l : dashes) {
            for (Piece p : l.pieces) {
                sums.add(Straight.sums(p.xs, p.ys, 0, p.count() - 1));
            }
        }
        Straight straight = sums.snapped();
        return new DashRow(dashes, straight, usualGap(dashes), chain(dashes));
    }

    /** Long and short alternate, or most gaps hold a dot too small to be a line. */
    private boolean chain(List<Line> dashes) {
        int alternating = 0;
        for (int i = 1; i + 1 < dashes.size(); i++) {
            double least = Math.min(dashes.get(i - 1).span(), dashes.get(i + 1).span());
            alternating += dashes.get(i).span() < 0.55 * least ? 1 : 0;
        }
        int dots = 0;
        for (int i = 1; i < dashes.size(); i++) {
            dots += dotted(dashes.get(i - 1), dashes.get(i)) ? 1 : 0;
        }
        return alternating * 3 >= dashes.size() - 1 && alternating > 0 || dots * 2 > dashes.size() - 1;
    }

    /** Something small stands in the middle of the gap; what crosses has ink beside the row as well. */
    private boolean dotted(Line a, Line b) {
        double[] m = middle(a);
        double[] n = middle(b);
        double length = Math.hypot(n[0] - m[0], n[1] - m[1]);
        Straight row = new Straight(m[0], m[1], (n[0] - m[0]) / length, (n[1] - m[1]) / length);
        double ta = row.along(m[0], m[1]);
        double tb = row.along(n[0], n[1]);
        double sign = Math.signum(tb - ta);
        double at = (ta + sign * a.span() / 2 + tb - sign * b.span() / 2) / 2;
        double x = row.x() + at * row.dx();
        double y = row.y() + at * row.dy();
        double wide = 2 * a.width;
        boolean ink = false;
        for (int i = -2; i <= 2; i++) {
            ink |= gauge.ink(upright, x + i * row.dx(), y + i * row.dy());
        }
        return ink
                && !gauge.ink(upright, x - wide * row.dy(), y + wide * row.dx())
                && !gauge.ink(upright, x + wide * row.dy(), y - wide * row.dx());
    }

    /** Cut where long dashes give way to short ones: two lines that meet end to end. */
    private static List<List<Line>> onePattern(List<Line> dashes) {
        for (int k = 2; k + 2 <= dashes.size(); k++) {
            double[] before = spans(dashes.subList(Math.max(0, k - 3), k));
            double[] after = spans(dashes.subList(k, Math.min(dashes.size(), k + 3)));
            boolean shorter = before[0] > 1.5 * after[1] + 3 && steady(before) && steady(after);
            boolean longer = after[0] > 1.5 * before[1] + 3 && steady(before) && steady(after);
            if (shorter || longer) {
                List<List<Line>> out = new ArrayList<>(List.of(dashes.subList(0, k)));
                out.addAll(onePattern(dashes.subList(k, dashes.size())));
                return out;
            }
        }
        return List.of(dashes);
    }

    /** The least and the largest. */
    private static double[] spans(List<Line> dashes) {
        return new double[] {
            dashes.stream().mapToDouble(Line::span).min().orElse(0),
            dashes.stream().mapToDouble(Line::span).max().orElse(0)
        };
    }

    private static boolean steady(double[] spans) {
        return spans[1] < 1.35 * spans[0] + 3;
    }
}
