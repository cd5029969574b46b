package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** Round pieces to whole circles, where lines that meet a circle cut it into arcs, and to arcs. */
final class Rounds {

    /** Arcs of one circle agree in middle and radius to this share of the radius. */
    private static final double SAME = 0.14;

    /** And short ones, each by itself, to this share. */
    private static final double NEAR = 0.4;

    /** So much of the way around must have ink. */
    private static final double CLOSED = 0.93;

    /** An arc this long may be part of a circle that other lines meet. */
    private static final double LEAST_ARC = 0.6;

    /** Smallest radius, in widths of the ink. */
    private static final double SMALLEST = 1.6;

    /** Longest hook at the end of an arc, in widths of the ink. */
    private static final double HOOK = 0.6;

    private static final double STEP = Math.toRadians(12);

    /** Points of a closed ring, or of an arc from joint to joint; registered pixels. */
    record Curve(List<double[]> points, boolean closed, List<Piece> pieces, Round round) {}

    private final Gauge gauge;
    private final Upright upright;

    private Rounds(Gauge gauge, Upright upright) {
        this.gauge = gauge;
        this.upright = upright;
    }

    static List<Curve> of(Collection<Piece> pieces, Gauge gauge, Upright upright) {
        return new Rounds(gauge, upright).curves(pieces);
    }

    private List<Curve> curves(Collection<Piece> pieces) {
        List<Piece> arcs = new ArrayList<>();
        List<Curve> out = new ArrayList<>(Discs.of(pieces, gauge, upright));
        out.addAll(Balls.of(pieces, out, gauge, upright));
        Set<Piece> taken = Collections.newSetFromMap(new IdentityHashMap<>());
        out.forEach(c -> taken.addAll(c.pieces()));
        for (Piece p : pieces) {
            if (taken.contains(p)) {
                continue;
            }
            if (p.round != null && p.ring()) {
                out.add(ring(p.round, List.of(p)));
            } else if (p.round != null) {
                arcs.add(p);
            }
        }
        arcs.sort((a, b) -> b.count() - a.count());
        while (!arcs.isEmpty()) {
            Piece first = arcs.remove(0);
            Circle whole = whole(first, arcs);
            if (whole == null) {
                out.add(arc(first));
            } else {
                arcs.removeAll(whole.pieces);
                pieces.stream()
                        .filter(p -> p.straight != null && on(whole.round, p))
                        .forEach(whole.pieces::add);
                out.add(ring(whole.round, whole.pieces));
            }
        }
        return out;
    }

    private record Circle(Round round, List<Piece> pieces) {}

    /** The circle that an arc is part of, null where it is none; short arcs tell theirs only two at a time. */
    private Circle whole(Piece first, List<Piece> arcs) {
        Circle alone = gathered(List.of(first), first.round, arcs);
        if (alone != null) {
            return alone;
        }
        for (Piece p : arcs) {
            if (alike(first, p) || meet(first, p)) {
                Round.Sums sums = new Round.Sums(first.round.x(), first.round.y());
                addTo(sums, first);
                addTo(sums, p);
                Round both = sums.circle();
                Circle two = both == null || !fits(first, both) || !fits(p, both)
                        ? null
                        : gathered(List.of(first, p), both, arcs);
                if (two != null) {
                    return two;
                }
            }
        }
        return null;
    }

    private static boolean alike(Piece p, Piece q) {
        double apart = Math.hypot(p.round.x() - q.round.x(), p.round.y() - q.round.y());
        return apart < NEAR * q.round.r() && Math.abs(p.round.r() - q.round.r()) < NEAR * q.round.r();
    }

    private static boolean meet(Piece p, Piece q) {
        return p.a == q.a || p.a == q.b || p.b == q.a || p.b == q.b;
    }

    /** All arcs that lie on the circle, where there is ink all around; else null. */
    private Circle gathered(List<Piece> start, Round round, List<Piece> arcs) {
        Piece first = start.get(0);
        List<Piece> same = new ArrayList<>(start);
        Round.Sums sums = new Round.Sums(round.x(), round.y());
        start.forEach(p -> addTo(sums, p));
        Round better = round;
        for (Piece p : arcs) {
            if (!start.contains(p) && fits(p, better)) {
                same.add(p);
                addTo(sums, p);
                Round of = sums.circle();
                better = of == null ? better : of;
            }
        }
        boolean ring = better.r() > SMALLEST * thick(first) && first.count() > LEAST_ARC * better.r();
        return ring && covered(better) > CLOSED ? new Circle(better, same) : null;
    }

    private boolean fits(Piece p, Round round) {
        int hook = hook(p);
        for (int i = hook; i < p.count() - hook; i++) {
            if (round.off(p.xs[i], p.ys[i]) >= Math.max(1.5, SAME * round.r())) {
                return false;
            }
        }
        return true;
    }

    private double thick(Piece p) {
        int k = p.count() / 2;
        return gauge.thickness((int) upright.backX(p.xs[k], p.ys[k]), (int) upright.backY(p.xs[k], p.ys[k]));
    }

    /** Thinning bends the ends of an arc towards what meets it there. */
    private int hook(Piece p) {
        return p.ring() ? 0 : Math.min(p.count() / 5, (int) (HOOK * thick(p)));
    }

    private void addTo(Round.Sums sums, Piece p) {
        int hook = hook(p);
        for (int i = hook; i < p.count() - hook; i++) {
            sums.add(p.xs[i], p.ys[i]);
        }
    }

    /** A short straight piece that thinning made of the circle beside what meets it. */
    private static boolean on(Round round, Piece p) {
        for (int i = 0; i < p.count(); i++) {
            if (round.off(p.xs[i], p.ys[i]) > 2) {
                return false;
            }
        }
        return p.length() < 1.2 * round.r();
    }

    /** Share of the way around that has ink. */
    private double covered(Round round) {
        int n = 72;
        int seen = 0;
        for (int i = 0; i < n; i++) {
            double dx = Math.cos(2 * Math.PI * i / n);
            double dy = Math.sin(2 * Math.PI * i / n);
            boolean ink = false;
            for (int off = -1; off <= 1; off++) {
                ink |= gauge.ink(upright, round.x() + (round.r() + off) * dx, round.y() + (round.r() + off) * dy);
            }
            seen += ink ? 1 : 0;
        }
        return (double) seen / n;
    }

    static Curve ring(Round round, List<Piece> pieces) {
        List<double[]> points = new ArrayList<>();
        for (double a = 0; a < 2 * Math.PI - 1e-6; a += Math.PI / 16) {
            points.add(new double[] {round.x() + round.r() * Math.cos(a), round.y() + round.r() * Math.sin(a)});
        }
        return new Curve(points, true, pieces, round);
    }

    static Curve arc(Piece p) {
        Round c = p.round;
        double from = c.angle(p.xs[0], p.ys[0]);
        double sweep = 0;
        for (int i = 1; i < p.count(); i++) {
            double turn = c.angle(p.xs[i], p.ys[i]) - c.angle(p.xs[i - 1], p.ys[i - 1]);
            sweep += Math.atan2(Math.sin(turn), Math.cos(turn));
        }
        int n = Math.max(4, (int) Math.ceil(Math.abs(sweep) / STEP));
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {p.a.x, p.a.y});
        for (int i = 1; i < n; i++) {
            double a = from + sweep * i / n;
            points.add(new double[] {c.x() + c.r() * Math.cos(a), c.y() + c.r() * Math.sin(a)});
        }
        points.add(new double[] {p.b.x, p.b.y});
        return new Curve(points, false, List.of(p), c);
    }
}
