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

/** Finds right-angled ways between cuttings through the lanes, with few bends, off the cuttings and off each other. */
final class LaneRouter {

    static final double PITCH_PT = 7;
    private static final int[] DX = {1, 0, -1, 0};
    private static final int[] DY = {0, 1, 0, -1};
    private static final double BEND = 6;
    private static final double CROSSING = 25;

    private final int columns;
    private final int rows;
    private final boolean[] shut;
    private final boolean[] used;

    LaneRouter(double widthPt, double heightPt, List<Rectangle2D> obstacles) {
        columns = (int) (widthPt / PITCH_PT) + 1;
        rows = (int) (heightPt / PITCH_PT) + 1;
        shut = new boolean[columns * rows];
        used = new boolean[columns * rows];
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

    static double snap(double at) {
        return Math.round(at / PITCH_PT) * PITCH_PT;
    }

    private Point2D point(int node) {
        return new Point2D.Double(node % columns * PITCH_PT, node / columns * PITCH_PT);
    }

    private int node(Point2D p) {
        int x = (int) Math.round(p.getX() / PITCH_PT);
        int y = (int) Math.round(p.getY() / PITCH_PT);
        return x < 0 || y < 0 || x >= columns || y >= rows ? -1 : y * columns + x;
    }

    /** Both places must lie in a lane; empty where there is no way. The way's nodes count as used afterwards. */
    Optional<List<Point2D>> route(Point2D from, Point2D to) {
        int a = node(from);
        int b = node(to);
        if (a < 0 || b < 0 || shut[a] || shut[b]) {
            return Optional.empty();
        }
        double[] cost = new double[columns * rows * 4];
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
            int x = n % columns + DX[d];
            int y = n / columns + DY[d];
            if (x < 0 || y < 0 || x >= columns || y >= rows || shut[y * columns + x]) {
                continue;
            }
            int next = (y * columns + x) * 4 + d;
            double c = cost[state] + 1 + (d == state % 4 ? 0 : BEND) + (used[y * columns + x] ? CROSSING : 0);
            if (c < cost[next]) {
                cost[next] = c;
                before[next] = state;
                open.add(new double[] {next, c});
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
