package linewalk.importer.scan;

import java.util.List;
import java.util.stream.Stream;

/** Where lines cross at a slant there is a little field of ink: it is no filled shape, since their pens cover all of it. */
final class Crossings {

    private static final double COVERED = 0.9;

    /** Shorter lines, in spans of the shape, may be what thinning left of it. */
    private static final double LONG = 1.5;

    private final List<Stretch> lines;

    private Crossings(List<Stretch> lines) {
        this.lines = lines;
    }

    /** The filled shapes that are more than a crossing. */
    static List<Solid> without(List<Solid> solids, List<Stretch> lines, List<Outlines.Ring> rings) {
        Crossings crossings =
                new Crossings(Stream.concat(lines.stream(), rings.stream().flatMap(r -> r.sides().stream()))
                        .toList());
        return solids.stream().filter(s -> s.dot() || !crossings.cover(s)).toList();
    }

    private boolean cover(Solid s) {
        double[] m = s.middle();
        double span = s.span();
        List<Stretch> near = lines.stream()
                .filter(l -> l.length() > LONG * span && distance(l, m) < span)
                .toList();
        int inside = 0;
        int covered = 0;
        for (double x = m[0] - span; x <= m[0] + span; x += 1) {
            for (double y = m[1] - span; y <= m[1] + span; y += 1) {
                double[] p = {x, y};
                if (s.covers(x, y)) {
                    inside++;
                    covered += near.stream().anyMatch(l -> distance(l, p) < l.widthPx() / 2 + 0.5) ? 1 : 0;
                }
            }
        }
        return covered > COVERED * inside;
    }

    private static double distance(Stretch l, double[] p) {
        double along = Math.max(0, Math.min(l.length(), l.along(p[0], p[1])));
        double[] nearest = l.at(along, 0);
        return Math.hypot(p[0] - nearest[0], p[1] - nearest[1]);
    }
}
