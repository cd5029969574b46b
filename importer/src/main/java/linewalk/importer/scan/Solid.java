package linewalk.importer.scan;

import java.util.List;
import java.util.stream.Stream;

/** A filled shape: its outline in registered pixels; a dot is round. */
record Solid(List<double[]> outline, boolean dot) {

    /** How much of a piece lies inside, of one no longer than the shape's sides and of a longer one: it leads out at corners. */
    private static final double BRIEF = 0.5;

    private static final double MOST = 0.8;

    /** Sine of the angle between a line and what is left of it inside. */
    private static final double ALONG = Math.sin(Math.toRadians(9));

    /** A piece of skeleton that only says that the shape is there: inside, and not along the line that it ends. */
    boolean swallows(Piece p) {
        int inside = 0;
        for (int i = 0; i < p.count(); i++) {
            inside += covers(p.xs[i], p.ys[i]) ? 1 : 0;
        }
        return inside > BRIEF * p.count()
                && inside > (p.length() < span() ? BRIEF : MOST) * p.count()
                && (dot ? freeEnd(p) : aslant(p) && !ends(p));
    }

    /** How far apart two of its corners are at most; pixels. */
    double span() {
        double most = 0;
        for (double[] a : outline) {
            for (double[] b : outline) {
                most = Math.max(most, Math.hypot(a[0] - b[0], a[1] - b[1]));
            }
        }
        return most;
    }

    private static boolean freeEnd(Piece p) {
        return !p.ring() && (p.a.pieces.size() == 1 || p.b.pieces.size() == 1);
    }

    /** It is the end of a line that comes from outside. */
    private boolean ends(Piece p) {
        return p.straight != null
                && !p.ring()
                && Stream.of(p.a, p.b).anyMatch(j -> j.pieces.stream()
                        .filter(q -> q != p && q.straight != null && !q.ring())
                        .filter(q -> !covers(q.other(j).x, q.other(j).y))
                        .anyMatch(q -> p.straight.sine(q.straight) < ALONG
                                && p.from(j)[0] * q.from(j)[0] + p.from(j)[1] * q.from(j)[1] < 0));
    }

    private boolean aslant(Piece p) {
        if (p.straight == null || outline.size() != 3) {
            return true;
        }
        double best = 0;
        for (int i = 0; i < 3; i++) {
            double[] tip = outline.get(i);
            double[] a = outline.get((i + 1) % 3);
            double[] b = outline.get((i + 2) % 3);
            double dx = tip[0] - (a[0] + b[0]) / 2;
            double dy = tip[1] - (a[1] + b[1]) / 2;
            boolean even = Math.abs(Math.hypot(tip[0] - a[0], tip[1] - a[1]) - Math.hypot(tip[0] - b[0], tip[1] - b[1]))
                    < 0.15 * Math.hypot(dx, dy) + 1;
            double along = Math.abs(dx * p.straight.dx() + dy * p.straight.dy()) / Math.hypot(dx, dy);
            best = even ? Math.max(best, along) : best;
        }
        return best < 0.94;
    }

    double[] middle() {
        return new double[] {
            outline.stream().mapToDouble(p -> p[0]).average().orElse(0),
            outline.stream().mapToDouble(p -> p[1]).average().orElse(0)
        };
    }

    boolean covers(double x, double y) {
        boolean in = false;
        for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
            double[] a = outline.get(i);
            double[] b = outline.get(j);
            if ((a[1] > y) != (b[1] > y) && x < (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) + a[0]) {
                in = !in;
            }
        }
        return in;
    }
}
