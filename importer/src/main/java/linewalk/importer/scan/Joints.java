package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import linewalk.importer.scan.Piece.Joint;

/** Ways of pixels to pieces that share joints, in registered pixels. */
final class Joints {

    /** Thinning bends lines near branches this far, in widths of the ink there. */
    private static final double SKIP = 0.7;

    private final Upright upright;
    private final Gauge gauge;
    private final Map<Web.Node, Joint> joints = new IdentityHashMap<>();
    private final List<Piece> pieces = new ArrayList<>();

    private Joints(Upright upright, Gauge gauge) {
        this.upright = upright;
        this.gauge = gauge;
    }

    static List<Piece> of(Web web, Upright upright, Gauge gauge) {
        Joints j = new Joints(upright, gauge);
        web.ways().forEach(j::way);
        return j.pieces;
    }

    private void way(Web.Way w) {
        int n = w.length();
        double thick = thick(w);
        boolean ring = w.a == null;
        // thinning bends lines near branches: what lies within the ink of the crossing line says nothing
        int skipA = ring || w.a.ways.size() < 2 ? 0 : skip(w.a, n);
        int skipB = ring || w.b.ways.size() < 2 ? 0 : skip(w.b, n);
        double[] xs = new double[n - skipA - skipB];
        double[] ys = new double[xs.length];
        for (int i = 0; i < xs.length; i++) {
            double px = w.xs[i + skipA] + 0.5;
            double py = w.ys[i + skipA] + 0.5;
            xs[i] = upright.x(px, py);
            ys[i] = upright.y(px, py);
        }
        if (ring) {
            ring(xs, ys, thick);
        } else if (xs.length > 0) {
            boolean free = w.a.ways.size() < 2 && w.b.ways.size() < 2;
            chain(cut(Pieces.of(xs, ys, thick, free)), joint(w.a), joint(w.b), thick);
        }
    }

    private List<Piece> cut(List<Piece> chain) {
        PenChange pens = new PenChange(gauge, upright);
        return chain.stream().flatMap(p -> pens.cut(p).stream()).toList();
    }

    private static int skip(Web.Node node, int n) {
        return (int) Math.min(n / 3, Math.round(SKIP * node.thick));
    }

    private double thick(Web.Way w) {
        double[] all = new double[Math.min(15, w.length())];
        for (int i = 0; i < all.length; i++) {
            int k = (int) ((i + 0.5) * w.length() / all.length);
            all[i] = gauge.thickness(w.xs[k], w.ys[k]);
        }
        java.util.Arrays.sort(all);
        return Math.max(1, all[all.length / 2]);
    }

    private Joint joint(Web.Node n) {
        return joints.computeIfAbsent(
                n, k -> new Joint(upright.x(n.x + 0.5, n.y + 0.5), upright.y(n.x + 0.5, n.y + 0.5), n.thick));
    }

    private void chain(List<Piece> chain, Joint from, Joint to, double thick) {
        Joint at = from;
        for (int i = 0; i < chain.size(); i++) {
            Piece p = chain.get(i);
            Joint next = i + 1 == chain.size() ? to : between(p, chain.get(i + 1), thick);
            p.tie(at, next);
            pieces.add(p);
            at = next;
        }
    }

    private static Joint between(Piece p, Piece q, double thick) {
        double x = (p.xs[p.count() - 1] + q.xs[0]) / 2;
        double y = (p.ys[p.count() - 1] + q.ys[0]) / 2;
        return new Joint(x, y, thick);
    }

    /** A way without ends: a circle, or sides around. */
    private void ring(double[] xs, double[] ys, double thick) {
        Round whole = xs.length < 8 ? null : Round.through(xs, ys, 0, xs.length - 1);
        boolean circle = whole != null;
        for (int i = 0; circle && i < xs.length; i++) {
            circle = whole.off(xs[i], ys[i]) < Math.max(1.2, Math.max(0.25 * thick, 0.04 * whole.r()));
        }
        if (circle) {
            pieces.add(new Piece(xs, ys, null, whole));
            return;
        }
        int start = corner(xs, ys);
        double[] rx = new double[xs.length + 1];
        double[] ry = new double[xs.length + 1];
        for (int i = 0; i <= xs.length; i++) {
            rx[i] = xs[(start + i) % xs.length];
            ry[i] = ys[(start + i) % xs.length];
        }
        Joint first = new Joint(rx[0], ry[0], thick);
        chain(Pieces.ofRing(rx, ry, thick), first, first, thick);
    }

    /** The place furthest from the middle is a corner. */
    private static int corner(double[] xs, double[] ys) {
        double mx = java.util.Arrays.stream(xs).average().orElse(0);
        double my = java.util.Arrays.stream(ys).average().orElse(0);
        int best = 0;
        for (int i = 0; i < xs.length; i++) {
            best = Math.hypot(xs[i] - mx, ys[i] - my) > Math.hypot(xs[best] - mx, ys[best] - my) ? i : best;
        }
        return best;
    }
}
