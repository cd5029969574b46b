package linewalk.importer.scan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Small circles told by the paper inside them: a round hole with ink all around. What meets a small ball, such as the arms
 * of its seat, leaves too little of its pen to tell bows from corners, but does not reach inside.
 */
final class Balls {

    /** Radius of the hole, in widths of the ink around it. */
    private static final double SMALLEST = 1;

    private static final double LARGEST = 9;

    /** Share of the hole that lies in the disc of its size about its middle; a square has 0.91. */
    private static final double ROUND = 0.935;

    private static final int STEPS = 48;

    /** Share of the way around on which there is paper a pen's width outside the ring: holes in letters have less. */
    private static final double FREE = 0.5;

    /** Share of a piece that lies on the ring where it is part of it. */
    private static final double LIES = 0.6;

    private final Gauge gauge;
    private final Upright upright;
    private final Bits seen;

    private record Hole(double x, double y, double r, List<int[]> pixels) {}

    private Balls(Gauge gauge, Upright upright) {
        this.gauge = gauge;
        this.upright = upright;
        this.seen = gauge.blank();
    }

    /** @param known circles: what lies inside them or along them is not looked at again */
    static List<Rounds.Curve> of(
            Collection<Piece> pieces, Collection<Rounds.Curve> known, Gauge gauge, Upright upright) {
        Balls balls = new Balls(gauge, upright);
        List<Rounds.Curve> found = new ArrayList<>();
        for (Piece p : pieces) {
            for (int side : new int[] {-1, 1}) {
                balls.beside(p, side)
                        .filter(c -> known.stream().noneMatch(k -> k.closed() && same(k.round(), c)))
                        .flatMap(c -> balls.ring(c, pieces))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private static boolean same(Round a, Round b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y()) < 0.5 * Math.max(a.r(), b.r());
    }

    /** The circle around the hole beside the middle of a piece. */
    private Optional<Round> beside(Piece p, int side) {
        int k = p.count() / 2;
        double x = upright.backX(p.xs[k], p.ys[k]);
        double y = upright.backY(p.xs[k], p.ys[k]);
        double thick = gauge.thickness((int) x, (int) y);
        if (thick == 0 || p.length() > 2 * Math.PI * LARGEST * thick) {
            return Optional.empty();
        }
        int from = Math.max(0, k - 2);
        int to = Math.min(p.count() - 1, k + 2);
        double dx = upright.backX(p.xs[to], p.ys[to]) - upright.backX(p.xs[from], p.ys[from]);
        double dy = upright.backY(p.xs[to], p.ys[to]) - upright.backY(p.xs[from], p.ys[from]);
        double length = Math.hypot(dx, dy);
        if (length == 0) {
            return Optional.empty();
        }
        double nx = -dy / length * side;
        double ny = dx / length * side;
        double out = gauge.reach(x, y, nx, ny, thick + 2) + 0.5;
        return hole((int) Math.floor(x + out * nx), (int) Math.floor(y + out * ny), thick)
                .flatMap(h -> round(h, thick));
    }

    /** The paper around a pixel, where it is shut in closely. */
    private Optional<Hole> hole(int x, int y, double thick) {
        double most = 2 * LARGEST * thick;
        if (gauge.inked(x, y) || seen.get(x, y) || open(x, y, most)) {
            return Optional.empty();
        }
        double area = Math.PI * LARGEST * LARGEST * thick * thick;
        List<int[]> pixels = new ArrayList<>();
        Deque<int[]> next = new ArrayDeque<>(List.of(new int[] {x, y}));
        seen.set(x, y);
        while (!next.isEmpty()) {
            int[] at = next.pop();
            pixels.add(at);
            if (pixels.size() > area) {
                return Optional.empty();
            }
            for (int[] d : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                int px = at[0] + d[0];
                int py = at[1] + d[1];
                if (!gauge.inked(px, py) && seen.isWithin(px, py) && !seen.get(px, py)) {
                    seen.set(px, py);
                    next.push(new int[] {px, py});
                }
            }
        }
        double sx = pixels.stream().mapToDouble(q -> q[0] + 0.5).sum() / pixels.size();
        double sy = pixels.stream().mapToDouble(q -> q[1] + 0.5).sum() / pixels.size();
        return Optional.of(new Hole(sx, sy, Math.sqrt(pixels.size() / Math.PI), pixels));
    }

    /** In one of eight directions there is no ink near. */
    private boolean open(int x, int y, double most) {
        for (int i = 0; i < 8; i++) {
            double dx = Math.cos(Math.PI * i / 4);
            double dy = Math.sin(Math.PI * i / 4);
            double t = 1;
            while (t < most && !gauge.inked((int) Math.floor(x + 0.5 + t * dx), (int) Math.floor(y + 0.5 + t * dy))) {
                t++;
            }
            if (t >= most) {
                return true;
            }
        }
        return false;
    }

    private Optional<Round> round(Hole h, double thick) {
        long inside = h.pixels.stream()
                .filter(q -> Math.hypot(q[0] + 0.5 - h.x, q[1] + 0.5 - h.y) <= h.r)
                .count();
        boolean sized = h.r > SMALLEST * thick && h.r < LARGEST * thick && h.r > 2.5;
        if (!sized || inside < ROUND * h.pixels.size()) {
            return Optional.empty();
        }
        double[] pens = new double[STEPS];
        int free = 0;
        for (int i = 0; i < STEPS; i++) {
            double dx = Math.cos(2 * Math.PI * i / STEPS);
            double dy = Math.sin(2 * Math.PI * i / STEPS);
            double from = h.r + 0.5;
            pens[i] = gauge.reach(h.x + from * dx, h.y + from * dy, dx, dy, 4 * thick);
        }
        double pen = Arrays.stream(pens).sorted().toArray()[STEPS / 3] + 0.5;
        for (int i = 0; i < STEPS; i++) {
            free += pens[i] < 2 * pen ? 1 : 0;
        }
        return free < FREE * STEPS
                ? Optional.empty()
                : Optional.of(new Round(upright.x(h.x, h.y), upright.y(h.x, h.y), h.r + pen / 2));
    }

    private Optional<Rounds.Curve> ring(Round round, Collection<Piece> pieces) {
        List<Piece> along = pieces.stream().filter(p -> lies(p, round)).toList();
        return along.isEmpty() ? Optional.empty() : Optional.of(Rounds.ring(round, along));
    }

    private static boolean lies(Piece p, Round round) {
        int on = 0;
        for (int i = 0; i < p.count(); i++) {
            on += round.off(p.xs[i], p.ys[i]) <= 2 ? 1 : 0;
        }
        return on > LIES * p.count() && p.length() < 2.2 * round.r();
    }
}
