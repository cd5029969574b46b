package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * Two filled triangles that touch with their tips are one closed shape, a valve that is shut, and no heads of arrows: lines
 * end at its sides, and what thinning left in it says nothing.
 */
final class BowTies {

    /** How far apart the tips may be, in spans of a triangle: where they touch, the ink is wider than a tip. */
    private static final double APART = 0.2;

    private static final double ALIKE = 0.8;

    /** Cosine between the ways out of the tips. */
    private static final double OPPOSITE = -0.97;

    private static final double STEP = 0.5;

    private final Set<Solid> halves = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<List<double[]>> outlines = new ArrayList<>();

    BowTies(List<Solid> solids) {
        List<Solid> triangles =
                solids.stream().filter(s -> !s.dot() && s.outline().size() == 3).toList();
        for (int i = 0; i < triangles.size(); i++) {
            for (Solid o : triangles.subList(i + 1, triangles.size())) {
                pair(triangles.get(i), o);
            }
        }
    }

    private void pair(Solid s, Solid o) {
        double span = Math.max(s.span(), o.span());
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                double[] a = s.outline().get(i);
                double[] b = o.outline().get(k);
                boolean tips = Math.hypot(a[0] - b[0], a[1] - b[1]) < APART * span;
                if (tips && Math.min(s.span(), o.span()) > ALIKE * span && opposite(s, i, o, k)) {
                    double[] tip = {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2};
                    take(s, i, tip);
                    take(o, k, tip);
                }
            }
        }
    }

    private static boolean opposite(Solid s, int i, Solid o, int k) {
        double[] p = out(s, i);
        double[] q = out(o, k);
        return p[0] * q[0] + p[1] * q[1] < OPPOSITE;
    }

    /** From a corner to the middle of the side across. */
    private static double[] out(Solid s, int i) {
        double[] tip = s.outline().get(i);
        double[] m = s.middle();
        double length = Math.hypot(m[0] - tip[0], m[1] - tip[1]);
        return new double[] {(m[0] - tip[0]) / length, (m[1] - tip[1]) / length};
    }

    private void take(Solid s, int i, double[] tip) {
        halves.add(s);
        outlines.add(List.of(tip, s.outline().get((i + 1) % 3), s.outline().get((i + 2) % 3)));
    }

    boolean has(Solid s) {
        return halves.contains(s);
    }

    /** Of every half, from the tip on. */
    List<List<double[]>> outlines() {
        return outlines;
    }

    /** What of the lines lies outside. */
    List<Stretch> cut(List<Stretch> lines) {
        List<Stretch> out = new ArrayList<>();
        for (Stretch l : lines) {
            if (halves.stream().noneMatch(h -> near(l, h))) {
                out.add(l);
            } else {
                out.addAll(outside(l));
            }
        }
        return out;
    }

    private static boolean near(Stretch l, Solid h) {
        double[] m = h.middle();
        double along = Math.max(0, Math.min(l.length(), l.along(m[0], m[1])));
        double[] at = l.at(along, 0);
        return Math.hypot(at[0] - m[0], at[1] - m[1]) < h.span();
    }

    private List<Stretch> outside(Stretch l) {
        List<Stretch> out = new ArrayList<>();
        double from = 0;
        for (double t = 0; t <= l.length() + STEP; t += STEP) {
            double[] p = l.at(Math.min(t, l.length()), 0);
            boolean in = halves.stream().anyMatch(h -> h.covers(p[0], p[1]));
            if (in || t >= l.length()) {
                double[] a = l.at(from, 0);
                boolean line = t - from > 2 * l.widthPx();
                if (line) {
                    out.add(new Stretch(a[0], a[1], p[0], p[1], l.widthPx()));
                }
            }
            from = in ? t + STEP : from;
        }
        return out;
    }
}
