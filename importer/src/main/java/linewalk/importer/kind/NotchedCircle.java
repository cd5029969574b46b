package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Stroke;
import linewalk.importer.symbol.Outline;

/**
 * A circle whose outline runs around a triangle at its rim: the two share points where a program drew both in pieces.
 *
 * @param notches the triangles, each with two corners on the rim
 */
record NotchedCircle(Outline circle, List<Triangle> notches) {

    private static final double OFF = 0.05;
    private static final int LEAST = 10;

    static Optional<NotchedCircle> of(Outline o) {
        List<Point> p = o.stroke().points();
        int n = p.size();
        if (n < LEAST) {
            return Optional.empty();
        }
        for (int i = 0; i < 6; i++) {
            Point a = p.get(i * n / 18);
            Point b = p.get(i * n / 18 + n / 3);
            Point c = p.get(i * n / 18 + 2 * (n / 3) - 1);
            Point m = center(a, b, c);
            if (m == null) {
                continue;
            }
            double r = m.distancePt(a);
            List<Boolean> on =
                    p.stream().map(x -> Math.abs(x.distancePt(m) - r) < OFF * r).toList();
            long round = on.stream().filter(x -> x).count();
            if (round >= LEAST && round >= 0.7 * n && around(p, on, m)) {
                return Optional.of(new NotchedCircle(circle(m, r, o), notches(p, on)));
            }
        }
        return Optional.empty();
    }

    private static Point center(Point a, Point b, Point c) {
        double d = 2 * (a.xPt() * (b.yPt() - c.yPt()) + b.xPt() * (c.yPt() - a.yPt()) + c.xPt() * (a.yPt() - b.yPt()));
        if (Math.abs(d) < 1e-6) {
            return null;
        }
        double a2 = a.xPt() * a.xPt() + a.yPt() * a.yPt();
        double b2 = b.xPt() * b.xPt() + b.yPt() * b.yPt();
        double c2 = c.xPt() * c.xPt() + c.yPt() * c.yPt();
        return new Point(
                (a2 * (b.yPt() - c.yPt()) + b2 * (c.yPt() - a.yPt()) + c2 * (a.yPt() - b.yPt())) / d,
                (a2 * (c.xPt() - b.xPt()) + b2 * (a.xPt() - c.xPt()) + c2 * (b.xPt() - a.xPt())) / d);
    }

    /** Points of the rim lie on all sides. */
    private static boolean around(List<Point> p, List<Boolean> on, Point m) {
        boolean[] sector = new boolean[8];
        for (int i = 0; i < p.size(); i++) {
            if (on.get(i)) {
                double a = Math.atan2(p.get(i).yPt() - m.yPt(), p.get(i).xPt() - m.xPt());
                sector[Math.floorMod((int) Math.floor(a / Math.PI * 4), 8)] = true;
            }
        }
        int full = 0;
        for (boolean s : sector) {
            full += s ? 1 : 0;
        }
        return full >= 7;
    }

    private static List<Triangle> notches(List<Point> p, List<Boolean> on) {
        List<Triangle> found = new ArrayList<>();
        int n = p.size();
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            int after = (i + 1) % n;
            if (!on.get(i) && on.get(before) && on.get(after)) {
                found.add(new Triangle(List.of(p.get(before), p.get(i), p.get(after))));
            }
        }
        return found;
    }

    private static Outline circle(Point m, double r, Outline like) {
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double a = Math.PI * i / 12;
            ring.add(m.plus(r * Math.cos(a), r * Math.sin(a)));
        }
        Stroke s = new Stroke(ring, true, true, like.stroke().widthPt(), Dash.SOLID, false);
        return new Outline(s, s.box(), false);
    }
}
