package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.importer.scan.Piece.Joint;

/**
 * Pieces to whole lines. Two straight pieces that go on in one direction through a joint, with one width, are one line;
 * then every joint is put where the lines that end or pass there cross.
 */
final class Lines {

    /** Sine of the bend that thinning may leave in a straight line of a few widths' length. */
    private static final double BEND = Math.sin(Math.toRadians(9));

    /** By how much one end of a short piece may lie beside where it belongs. */
    private static final double UNSURE_PX = 2;

    /** In widths: a piece this short says nothing of its width. */
    private static final double BLIND = 2.5;

    /** A line so many times wider is of another pen, however little is known: pens of a drawing differ by 2 (ISO 128). */
    private static final double TWO_PENS = 1.55;

    private final Gauge gauge;
    private final Upright upright;
    private final Map<Piece, Line> lineOf = new LinkedHashMap<>();
    private final Set<Joint> joints = new LinkedHashSet<>();

    private Lines(Gauge gauge, Upright upright) {
        this.gauge = gauge;
        this.upright = upright;
    }

    /** Every straight piece's line, in the order of the pieces; joints moved to where they belong. */
    static Map<Piece, Line> of(Collection<Piece> pieces, Gauge gauge, Upright upright) {
        Lines lines = new Lines(gauge, upright);
        for (Piece p : pieces) {
            if (p.straight != null) {
                Line own = new Line();
                own.pieces.add(p);
                own.width = lines.width(p);
                lines.lineOf.put(p, own);
            }
            if (!p.ring()) {
                lines.joints.add(p.a);
                lines.joints.add(p.b);
            }
        }
        lines.joints.forEach(lines::joinAt);
        Set<Line> all = lines.all();
        all.forEach(lines::finish);
        lines.joints.forEach(lines::place);
        return lines.lineOf;
    }

    private Set<Line> all() {
        Set<Line> all = new LinkedHashSet<>(lineOf.values());
        return all;
    }

    private void finish(Line line) {
        line.fit();
        double weight = 0;
        double sum = 0;
        for (Piece p : line.pieces) {
            double w = width(p);
            sum += w * p.length();
            weight += p.length();
        }
        line.width = sum / weight;
    }

    /** Mean width across a piece, without its ends and without what crosses. */
    private double width(Piece p) {
        Straight s = p.straight;
        double t0 = s.along(p.xs[0], p.ys[0]);
        double t1 = s.along(p.xs[p.count() - 1], p.ys[p.count() - 1]);
        int n = Math.max(3, Math.min(60, p.count() / 2));
        double[] widths = new double[n];
        for (int i = 0; i < n; i++) {
            double t = t0 + (t1 - t0) * (i + 1.0) / (n + 1);
            double x = s.x() + t * s.dx();
            double y = s.y() + t * s.dy();
            double bx = upright.backX(x, y);
            double by = upright.backY(x, y);
            double dx = upright.backX(x + s.dx(), y + s.dy()) - bx;
            double dy = upright.backY(x + s.dx(), y + s.dy()) - by;
            widths[i] = gauge.across(bx, by, dx, dy);
        }
        java.util.Arrays.sort(widths);
        double middle = widths[n / 2];
        return java.util.Arrays.stream(widths)
                .filter(w -> Math.abs(w - middle) <= 1.5)
                .average()
                .orElse(middle);
    }

    private void joinAt(Joint j) {
        List<Piece> here = j.pieces.stream().filter(p -> p.straight != null).toList();
        List<Piece> left = new ArrayList<>(here);
        while (left.size() > 1) {
            Piece[] best = straightest(left, j);
            if (best == null) {
                return;
            }
            left.removeIf(p -> p == best[0] || p == best[1]);
            union(best[0], best[1]);
        }
    }

    private Piece[] straightest(List<Piece> here, Joint j) {
        Piece[] best = null;
        double least = BEND;
        for (int i = 0; i < here.size(); i++) {
            for (int k = i + 1; k < here.size(); k++) {
                double off = bend(here.get(i), here.get(k), j);
                if (off < least) {
                    least = off;
                    best = new Piece[] {here.get(i), here.get(k)};
                }
            }
        }
        return best;
    }

    private double bend(Piece p, Piece q, Joint j) {
        if (p == q || lineOf.get(p) == lineOf.get(q)) {
            return 1;
        }
        double[] a = p.from(j);
        double[] b = q.from(j);
        if (a[0] * b[0] + a[1] * b[1] > -0.9) {
            return 1;
        }
        double wp = lineOf.get(p).width;
        double wq = lineOf.get(q).width;
        double shorter = Math.min(p.length(), q.length());
        // the width of a few pixels' length is known to a pixel
        boolean branch = j.pieces.size() > 2;
        double known = branch && shorter < 8 * Math.max(wp, wq) ? 1.2 : 0.3;
        // that of a piece hardly longer than wide is not known at all: the ink of a corner may lie across it
        boolean unknown = branch && shorter < BLIND * Math.min(wp, wq);
        boolean alike = Math.max(wp, wq) < TWO_PENS * Math.min(wp, wq) + 0.5;
        boolean samePen = unknown || alike && Math.abs(wp - wq) < 0.2 * Math.max(wp, wq) + known;
        Piece longer = p.length() >= q.length() ? p : q;
        Piece other = longer == p ? q : p;
        double apart = longer.straight.aside(other.xs[other.count() / 2], other.ys[other.count() / 2]);
        // the middle of a short piece says more than its direction; where that leads to is the less known the shorter
        // it is
        double lead = branch && inked(p.other(j), q.other(j)) ? 0.5 * shorter / longer.length() : 0;
        double slack = 1.2 + 0.15 * Math.max(wp, wq) + 0.02 * shorter + lead;
        double sine = p.straight.sine(q.straight);
        boolean turns = sine > BEND + UNSURE_PX / shorter;
        return !samePen || apart > slack || turns ? 1 : Math.min(sine, apart / Math.max(20, shorter));
    }

    /** One straight line between them runs on ink. */
    private boolean inked(Joint from, Joint to) {
        double length = Math.hypot(to.x - from.x, to.y - from.y);
        for (double t = 0; t <= length; t++) {
            double share = t / length;
            if (!gauge.ink(upright, from.x + share * (to.x - from.x), from.y + share * (to.y - from.y))) {
                return false;
            }
        }
        return true;
    }

    private void union(Piece p, Piece q) {
        Line into = lineOf.get(p);
        Line from = lineOf.get(q);
        into.pieces.addAll(from.pieces);
        from.pieces.forEach(x -> lineOf.put(x, into));
    }

    private void place(Joint j) {
        List<Line> here = j.pieces.stream()
                .filter(p -> p.straight != null)
                .map(lineOf::get)
                .distinct()
                .sorted((a, b) -> Double.compare(b.length(), a.length()))
                .toList();
        if (here.isEmpty()) {
            return;
        }
        double reach = 1.6 * j.thick + 3;
        for (int i = 1; i < here.size(); i++) {
            double[] x = here.get(0).straight.crossing(here.get(i).straight);
            if (x != null && Math.hypot(x[0] - j.x, x[1] - j.y) < reach && staysBetween(j, x, here.get(0))) {
                move(j, x);
                return;
            }
        }
        Round round = j.pieces.stream()
                .filter(p -> p.round != null)
                .map(p -> p.round)
                .findFirst()
                .orElse(null);
        double[] x = here.get(0).straight.nearest(j.x, j.y);
        move(j, round == null ? x : onRound(here.get(0).straight, round, x, reach));
        if (j.pieces.size() == 1) {
            toInkEnd(j, j.pieces.get(0));
        }
    }

    /** What meets a line at a slant next to its corner meets it before the corner still. */
    private static boolean staysBetween(Joint j, double[] to, Line line) {
        double from = line.along(j);
        double now = line.straight.along(to[0], to[1]);
        return j.pieces.stream()
                .filter(p -> line.pieces.contains(p) && !p.ring())
                .mapToDouble(p -> line.along(p.other(j)))
                .allMatch(end -> (end - from) * (end - now) > 0);
    }

    private static void move(Joint j, double[] to) {
        j.x = to[0];
        j.y = to[1];
    }

    private static double[] onRound(Straight s, Round round, double[] near, double reach) {
        double t = s.along(round.x(), round.y());
        double off = s.aside(round.x(), round.y());
        if (off >= round.r()) {
            return near;
        }
        double half = Math.sqrt(round.r() * round.r() - off * off);
        double at = s.along(near[0], near[1]);
        double best = Math.abs(t + half - at) < Math.abs(t - half - at) ? t + half : t - half;
        return Math.abs(best - at) > reach ? near : new double[] {s.x() + best * s.dx(), s.y() + best * s.dy()};
    }

    /** Thinning takes half a width off a free end. */
    private void toInkEnd(Joint j, Piece p) {
        Straight s = lineOf.get(p).straight;
        double[] out = p.from(j);
        double sign = -Math.signum(out[0] * s.dx() + out[1] * s.dy());
        double bx = upright.backX(j.x, j.y);
        double by = upright.backY(j.x, j.y);
        double dx = upright.backX(j.x + sign * s.dx(), j.y + sign * s.dy()) - bx;
        double dy = upright.backY(j.x + sign * s.dx(), j.y + sign * s.dy()) - by;
        double d = gauge.reach(bx, by, dx, dy, 1.5 * j.thick + 2);
        if (d < 1.5 * j.thick + 2) {
            j.x += sign * d * s.dx();
            j.y += sign * d * s.dy();
        }
    }
}
