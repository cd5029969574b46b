package linewalk.renderer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import linewalk.drawing.Point;

/** The shortest drawn way between two places of one line, through its runs. */
public final class RunWay {

    /** Points nearer than this are one. */
    private static final double SAME_PT = 0.8;
    /** How far an end's place may lie off the drawn line. */
    private static final double REACH_PT = 4;

    private final List<Point> nodes = new ArrayList<>();
    private final List<int[]> edges = new ArrayList<>();

    private RunWay() {}

    /** Empty where nothing is drawn between the two places. */
    public static Optional<List<Point>> between(List<List<Point>> runs, Point from, Point to) {
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        RunWay way = new RunWay();
        List<Point> splits = new ArrayList<>(List.of(from, to));
        for (List<Point> run : runs) {
            splits.add(run.get(0));
            splits.add(run.get(run.size() - 1));
        }
        for (List<Point> run : runs) {
            for (int i = 1; i < run.size(); i++) {
                way.add(run.get(i - 1), run.get(i), splits);
            }
        }
        int a = way.nearest(from);
        int b = way.nearest(to);
        return a < 0 || b < 0 ? Optional.empty() : way.shortest(a, b);
    }

    private void add(Point p, Point q, List<Point> splits) {
        List<Point> stops = new ArrayList<>(List.of(p, q));
        splits.stream().map(s -> foot(p, q, s)).flatMap(Optional::stream).forEach(stops::add);
        stops.sort(Comparator.comparingDouble(p::distancePt));
        for (int i = 1; i < stops.size(); i++) {
            int a = node(stops.get(i - 1));
            int b = node(stops.get(i));
            if (a != b) {
                edges.add(new int[] {a, b});
            }
        }
    }

    /** Where a place meets a segment's inside. */
    private static Optional<Point> foot(Point p, Point q, Point s) {
        double dx = q.xPt() - p.xPt();
        double dy = q.yPt() - p.yPt();
        double length2 = dx * dx + dy * dy;
        if (length2 == 0) {
            return Optional.empty();
        }
        double t = ((s.xPt() - p.xPt()) * dx + (s.yPt() - p.yPt()) * dy) / length2;
        Point f = p.plus(t * dx, t * dy);
        return t > 0 && t < 1 && f.distancePt(s) <= SAME_PT ? Optional.of(f) : Optional.empty();
    }

    private int node(Point p) {
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).distancePt(p) <= SAME_PT) {
                return i;
            }
        }
        nodes.add(p);
        return nodes.size() - 1;
    }

    private int nearest(Point p) {
        int best = -1;
        double least = REACH_PT;
        for (int i = 0; i < nodes.size(); i++) {
            double d = nodes.get(i).distancePt(p);
            if (d <= least) {
                least = d;
                best = i;
            }
        }
        return best;
    }

    private Optional<List<Point>> shortest(int from, int to) {
        double[] far = new double[nodes.size()];
        int[] before = new int[nodes.size()];
        Arrays.fill(far, Double.MAX_VALUE);
        Arrays.fill(before, -1);
        far[from] = 0;
        PriorityQueue<double[]> open = new PriorityQueue<>(Comparator.comparingDouble(n -> n[1]));
        open.add(new double[] {from, 0});
        while (!open.isEmpty()) {
            double[] next = open.poll();
            int n = (int) next[0];
            if (next[1] > far[n]) {
                continue;
            }
            for (int[] e : edges) {
                int o = e[0] == n ? e[1] : e[1] == n ? e[0] : -1;
                if (o >= 0 && far[n] + length(e) < far[o]) {
                    far[o] = far[n] + length(e);
                    before[o] = n;
                    open.add(new double[] {o, far[o]});
                }
            }
        }
        return far[to] == Double.MAX_VALUE ? Optional.empty() : Optional.of(back(before, to));
    }

    private double length(int[] edge) {
        return nodes.get(edge[0]).distancePt(nodes.get(edge[1]));
    }

    private List<Point> back(int[] before, int to) {
        List<Point> way = new ArrayList<>();
        for (int n = to; n >= 0; n = before[n]) {
            way.add(nodes.get(n));
        }
        Collections.reverse(way);
        return way;
    }
}
