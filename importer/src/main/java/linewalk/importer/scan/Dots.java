package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Join dots that were taken for triangles because the lines that meet there fill the corners between them: lines leave on
 * three sides or more, from the middle, or an arc begins there, as a hose does. An arrowhead has its line at its base, and
 * what it points at before its tip.
 */
final class Dots {

    /** How far a line may pass beside the middle, in spans of the shape. */
    private static final double MIDDLE = 0.2;

    /** How far it goes on from there at least, in spans. */
    private static final double LEAVES = 1.2;

    /** Cosine above which two lines leave the same way. */
    private static final double SAME = 0.8;

    private static final double OPPOSITE = -0.95;

    private static final int CORNERS = 24;

    /** How far from the middle an arc begins, in spans. */
    private static final double BEGINS = 0.6;

    private final List<Stretch> lines;
    private final List<Rounds.Curve> curves;

    private Dots(List<Stretch> lines, List<Rounds.Curve> curves) {
        this.lines = lines;
        this.curves = curves;
    }

    /** The shapes, with such dots round. */
    static List<Solid> round(
            List<Solid> solids, List<Stretch> lines, List<Outlines.Ring> rings, List<Rounds.Curve> curves) {
        Dots dots = new Dots(
                Stream.concat(lines.stream(), rings.stream().flatMap(r -> r.sides().stream()))
                        .toList(),
                curves.stream().filter(c -> !c.closed()).toList());
        return solids.stream()
                .map(s -> !s.dot() && s.outline().size() == 3 && dots.meet(s) ? disc(s) : s)
                .toList();
    }

    private boolean meet(Solid s) {
        double[] m = s.middle();
        double span = s.span();
        List<double[]> ways = new ArrayList<>();
        for (Stretch l : lines) {
            double at = l.along(m[0], m[1]);
            if (l.aside(m[0], m[1]) < MIDDLE * span) {
                double[] way = l.at(1, 0);
                double[] on = {way[0] - l.x0(), way[1] - l.y0()};
                add(ways, on, l.length() - at, at, span);
                add(ways, new double[] {-on[0], -on[1]}, at, l.length() - at, span);
            }
        }
        return !ways.isEmpty() && curves.stream().anyMatch(c -> begins(c, m, span))
                || ways.size() > 2 && ways.stream().anyMatch(a -> ways.stream().anyMatch(b -> dot(a, b) < OPPOSITE));
    }

    private static boolean begins(Rounds.Curve c, double[] m, double span) {
        return Stream.of(c.points().get(0), c.points().get(c.points().size() - 1))
                .anyMatch(p -> Math.hypot(p[0] - m[0], p[1] - m[1]) < BEGINS * span);
    }

    /** A way out that begins in the middle or behind it. */
    private static void add(List<double[]> ways, double[] way, double ahead, double behind, double span) {
        if (ahead > LEAVES * span && behind > -MIDDLE * span && ways.stream().noneMatch(w -> dot(w, way) > SAME)) {
            ways.add(way);
        }
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1];
    }

    private static Solid disc(Solid s) {
        double[] m = s.middle();
        double r = Math.sqrt(Hull.area(s.outline()) / Math.PI);
        List<double[]> out = new ArrayList<>();
        for (int i = 0; i < CORNERS; i++) {
            double a = 2 * Math.PI * i / CORNERS;
            out.add(new double[] {m[0] + r * Math.cos(a), m[1] + r * Math.sin(a)});
        }
        return new Solid(out, true);
    }
}
