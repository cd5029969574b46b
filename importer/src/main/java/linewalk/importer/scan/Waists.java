package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The two walls of a throttle: bows that bulge towards the line between them. At their waist, and where an arrow crosses
 * them, thinning leaves one knot of all. One free end of a wall tells where the other three must be; where all four are
 * inked with paper between, they are walls.
 */
final class Waists {

    /** Sizes in widths of the ink. */
    private static final double LONGEST = 16;

    private static final double SHORTEST = 2;

    /** How far from the line a wall is where they are closest. */
    private static final double FARTHEST = 4;

    private static final double INKED = 0.85;
    private static final double PAPER = 0.65;
    private static final int STEPS = 16;

    /** How far from the waist an arrow may cross a wall, in half lengths of the wall's piece up to there. */
    private static final double ASTRAY = 0.6;

    /** And how much further it may lie than a wall's first piece reaches, where others go on. */
    private static final double FURTHER = 1.5;

    /**
     * @param walls both, each from end to end; pixels
     * @param arrow across it, or nothing
     */
    record Waist(
            List<List<double[]>> walls,
            double widthPx,
            Straight flow,
            double x,
            double y,
            double half,
            Optional<Stretch> arrow) {

        private Waist with(Optional<Stretch> across) {
            return new Waist(walls, widthPx, flow, x, y, half, across);
        }
    }

    private final Gauge gauge;
    private final Upright upright;
    private final Collection<Line> lines;
    private final List<Waist> found = new ArrayList<>();

    private Waists(Collection<Line> lines, Gauge gauge, Upright upright) {
        this.lines = lines;
        this.gauge = gauge;
        this.upright = upright;
    }

    static List<Waist> of(Collection<Piece> pieces, Collection<Line> lines, Gauge gauge, Upright upright) {
        Waists waists = new Waists(lines, gauge, upright);
        for (Piece p : pieces) {
            double thick = p.ring() ? 0 : waists.thick(p);
            boolean brief = p.length() < LONGEST * thick && p.length() > SHORTEST * thick;
            if (brief && p.a.pieces.size() == 1) {
                waists.from(p, p.a, p.b, thick);
            }
            if (brief && p.b.pieces.size() == 1) {
                waists.from(p, p.b, p.a, thick);
            }
        }
        return waists.found;
    }

    private double thick(Piece p) {
        int k = p.count() / 2;
        return gauge.thickness((int) upright.backX(p.xs[k], p.ys[k]), (int) upright.backY(p.xs[k], p.ys[k]));
    }

    private void from(Piece p, Piece.Joint free, Piece.Joint inner, double thick) {
        for (Line l : lines) {
            double out = l.straight.aside(free.x, free.y);
            double in = l.straight.aside(inner.x, inner.y);
            double half = Math.abs(l.along(free) - l.along(inner));
            boolean flow = !l.pieces.contains(p)
                    && in < FARTHEST * thick
                    && out > in + 0.15 * half
                    && out > 1.5 * thick
                    && out < 0.75 * LONGEST * thick
                    && half > SHORTEST * thick
                    && l.span() > 2 * half
                    && l.spans(inner.x, inner.y);
            if (flow) {
                best(l, free, inner, thick);
            }
        }
    }

    private void best(Line l, Piece.Joint free, Piece.Joint inner, double thick) {
        Waist best = null;
        double most = 0;
        double end = l.along(free);
        double out = l.straight.aside(free.x, free.y);
        double inside = l.along(inner);
        double around = Math.max(thick, ASTRAY * Math.abs(end - inside));
        double beyond = Math.max(thick, FURTHER * Math.abs(end - inside));
        double from = inside - (inside > end ? around : beyond);
        double to = inside + (inside > end ? beyond : around);
        for (double at = from; at <= to; at += 1) {
            double half = Math.abs(end - at);
            double[] w = l.at(at);
            if (half < 2 * SHORTEST || found.stream().anyMatch(f -> Math.hypot(f.x - w[0], f.y - w[1]) < f.half)) {
                continue;
            }
            for (double gap = 0.5 * thick; gap < Math.min(FARTHEST * thick, 0.8 * out); gap += 0.5) {
                // longer walls are better, but not beyond their ink
                double score = half * Math.pow(score(l.straight, w, half, gap, out, thick), 3);
                if (score > most) {
                    most = score;
                    best = waist(l.straight, w, half, gap, out, thick);
                }
            }
        }
        if (best != null) {
            found.add(best.with(new ArrowShafts(gauge, upright).across(best)));
        }
    }

    /** Share of the walls that is inked; 0 where any quarter is not, or where there is ink between wall and line. */
    private double score(Straight flow, double[] w, double half, double gap, double out, double thick) {
        double sum = 0;
        int paper = 0;
        int beside = 0;
        for (int side : new int[] {-1, 1}) {
            for (int way : new int[] {-1, 1}) {
                int inked = 0;
                int n = 0;
                for (int i = STEPS / 4; i < STEPS; i++) {
                    double t = (double) i / STEPS;
                    double off = gap + (out - gap) * t * t;
                    inked += ink(flow, w, way * t * half, side * off) ? 1 : 0;
                    n++;
                    if (off > 2.4 * thick) {
                        beside += 2;
                        paper += ink(flow, w, way * t * half, side * off / 2) ? 0 : 1;
                        paper += ink(flow, w, way * t * half, side * (off + 1.5 * thick)) ? 0 : 1;
                    }
                }
                if (inked < INKED * n) {
                    return 0;
                }
                sum += inked;
            }
        }
        return beside > STEPS / 2 && paper >= PAPER * beside ? sum : 0;
    }

    private boolean ink(Straight flow, double[] w, double along, double aside) {
        return gauge.ink(
                upright, w[0] + along * flow.dx() - aside * flow.dy(), w[1] + along * flow.dy() + aside * flow.dx());
    }

    private static Waist waist(Straight flow, double[] w, double half, double gap, double out, double thick) {
        List<List<double[]>> walls = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            List<double[]> wall = new ArrayList<>();
            for (int i = -4; i <= 4; i++) {
                double t = i / 4.0;
                double off = side * (gap + (out - gap) * t * t);
                wall.add(new double[] {
                    w[0] + t * half * flow.dx() - off * flow.dy(), w[1] + t * half * flow.dy() + off * flow.dx()
                });
            }
            walls.add(wall);
        }
        return new Waist(walls, thick, flow, w[0], w[1], half, Optional.empty());
    }

    /** Pieces that are nothing but part of a wall, or of the knot at the waist. */
    static List<Piece> swallowed(List<Waist> waists, Collection<Piece> pieces, Map<Piece, Line> lineOf) {
        return pieces.stream()
                .filter(p -> waists.stream().anyMatch(w -> swallows(w, p, lineOf.get(p))))
                .toList();
    }

    private static boolean swallows(Waist w, Piece p, Line line) {
        if (line != null && line.span() > 2.2 * w.half) {
            return false;
        }
        for (int i = 0; i < p.count(); i++) {
            double x = p.xs[i];
            double y = p.ys[i];
            boolean knot = Math.hypot(x - w.x, y - w.y) < 0.45 * w.half;
            boolean wall = w.walls.stream().anyMatch(q -> distance(q, x, y) < 1.2 * w.widthPx);
            boolean shaft = w.arrow.isPresent() && w.arrow.get().covers(x, y);
            if (!knot && !wall && !shaft) {
                return false;
            }
        }
        return true;
    }

    private static double distance(List<double[]> wall, double x, double y) {
        double least = Double.MAX_VALUE;
        for (int i = 1; i < wall.size(); i++) {
            Stretch s = new Stretch(wall.get(i - 1)[0], wall.get(i - 1)[1], wall.get(i)[0], wall.get(i)[1], 1);
            double t = Math.max(0, Math.min(s.length(), s.along(x, y)));
            double[] at = s.at(t, 0);
            least = Math.min(least, Math.hypot(at[0] - x, at[1] - y));
        }
        return least;
    }
}
