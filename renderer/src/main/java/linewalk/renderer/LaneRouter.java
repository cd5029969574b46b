package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/** Finds right-angled ways through the lanes between figures, with few bends, off the figures and off each other. */
final class LaneRouter {

    static final double PITCH_PT = 7;
    private static final int[] DX = {1, 0, -1, 0};
    private static final int[] DY = {0, 1, 0, -1};
    private static final double BEND = 6;
    private static final double CROSSING = 25;

    private final double[] xs;
    private final double[] ys;
    private final boolean[] shut;
    private final boolean[] used;

    /** Lanes {@link #PITCH_PT} apart. */
    LaneRouter(double widthPt, double heightPt, List<Rectangle2D> obstacles) {
        this(even(widthPt), even(heightPt), obstacles);
    }

    /** Lanes at the places given, in rising order; a lane must lie farther than 4 from an obstacle. */
    LaneRouter(double[] xs, double[] ys, List<Rectangle2D> obstacles) {
        this.xs = xs.clone();
        this.ys = ys.clone();
        shut = new boolean[xs.length * ys.length];
        used = new boolean[shut.length];
        for (Rectangle2D o : obstacles) {
            for (int i = 0; i < shut.length; i++) {
                Point2D p = point(i);
                shut[i] |= p.getX() > o.getMinX() - 4
                        && p.getX() < o.getMaxX() + 4
                        && p.getY() > o.getMinY() - 4
                        && p.getY() < o.getMaxY() + 4;
            }
        }
    }

    private static double[] even(double lengthPt) {
        double[] at = new double[(int) (lengthPt / PITCH_PT) + 1];
        Arrays.setAll(at, i -> i * PITCH_PT);
        return at;
    }

    static double snap(double at) {
        return Math.round(at / PITCH_PT) * PITCH_PT;
    }

    private Point2D point(int node) {
        return new Point2D.Double(xs[node % xs.length], ys[node / xs.length]);
    }

    private int node(Point2D p) {
        int x = nearest(xs, p.getX());
        int y = nearest(ys, p.getY());
        return x < 0 || y < 0 ? -1 : y * xs.length + x;
    }

    /** The lane that a place lies on, or -1. */
    private static int nearest(double[] lanes, double at) {
        int best = -1;
        double least = PITCH_PT / 2;
        for (int i = 0; i < lanes.length; i++) {
            if (Math.abs(lanes[i] - at) <= least) {
                least = Math.abs(lanes[i] - at);
                best = i;
            }
        }
        return best;
    }

    /** Lets ways cross a straight line drawn otherwise, but not run along it. */
    void use(Point2D from, Point2D to) {
        for (int i = 0; i < used.length; i++) {
            Point2D p = point(i);
            used[i] |=
                    java.awt.geom.Line2D.ptSegDist(from.getX(), from.getY(), to.getX(), to.getY(), p.getX(), p.getY())
                            < 1;
        }
    }

    /** Both places must lie in a lane; empty where there is no way. The way's nodes count as used afterwards. */
    Optional<List<Point2D>> route(Point2D from, Point2D to) {
        int a = node(from);
        int b = node(to);
        if (a < 0 || b < 0 || shut[a] || shut[b]) {
            return Optional.empty();
        }
        double[] cost = new double[shut.length * 4];
        int[] before = new int[cost.length];
        Arrays.fill(cost, Double.MAX_VALUE);
        Arrays.fill(before, -1);
        PriorityQueue<double[]> open = new PriorityQueue<>(
                Comparator.<double[]>comparingDouble(s -> s[1]).thenComparingDouble(s -> s[0]));
        for (int d = 0; d < 4; d++) {
            cost[a * 4 + d] = 0;
            open.add(new double[] {a * 4 + d, 0});
        }
        while (!open.isEmpty()) {
            double[] s = open.poll();
            int state = (int) s[0];
            if (s[1] > cost[state]) {
                continue;
            }
            if (state / 4 == b) {
                return Optional.of(way(before, state));
            }
            step(state, cost, before, open);
        }
        return Optional.empty();
    }

    private void step(int state, double[] cost, int[] before, PriorityQueue<double[]> open) {
        int n = state / 4;
        for (int d = 0; d < 4; d++) {
            int x = n % xs.length + DX[d];
            int y = n / xs.length + DY[d];
            if (x < 0 || y < 0 || x >= xs.length || y >= ys.length || shut[y * xs.length + x]) {
                continue;
            }
            int next = y * xs.length + x;
            double length = point(n).distance(point(next)) / PITCH_PT;
            double c = cost[state] + length + (d == state % 4 ? 0 : BEND) + (used[next] ? CROSSING : 0);
            if (c < cost[next * 4 + d]) {
                cost[next * 4 + d] = c;
                before[next * 4 + d] = state;
                open.add(new double[] {next * 4 + d, c});
            }
        }
    }

    private List<Point2D> way(int[] before, int last) {
        List<Point2D> points = new ArrayList<>();
        for (int s = last; s >= 0; s = before[s]) {
            used[s / 4] = true;
            Point2D p = point(s / 4);
            int n = points.size();
            if (n > 0 && points.get(n - 1).equals(p)) {
                continue;
            }
            if (n > 1 && straight(points.get(n - 2), points.get(n - 1), p)) {
                points.set(n - 1, p);
            } else {
                points.add(p);
            }
        }
        Collections.reverse(points);
        return points;
    }

    private static boolean straight(Point2D a, Point2D b, Point2D c) {
        return a.getX() == b.getX() && b.getX() == c.getX() || a.getY() == b.getY() && b.getY() == c.getY();
    }
}
