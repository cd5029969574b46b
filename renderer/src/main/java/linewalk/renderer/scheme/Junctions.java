package linewalk.renderer.scheme;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Where lines of one net meet. */
final class Junctions {

    private static final double NEAR_PT = 0.1;
    /** A point where a net divides is so high. */
    private static final double DIVISION_PT = 2;

    private Junctions() {}

    /**
     * Lines that meet at a division and all leave it on one side run together for a while: this tail would look like one
     * more line that ends in nothing. They are cut off where the first of them turns away.
     */
    static List<Layout.Course> withoutTails(List<Layout.Course> courses) {
        Map<Net, List<Layout.Course>> atDivision = courses.stream()
                .filter(c -> c.from() == null || c.to() == null)
                .collect(Collectors.groupingBy(Layout.Course::net, LinkedHashMap::new, Collectors.toList()));
        Map<Net, Point2D> ends = new LinkedHashMap<>();
        atDivision.forEach((net, some) -> {
            if (some.stream().allMatch(c -> c.from() == null) || some.stream().allMatch(c -> c.to() == null)) {
                ends.put(net, end(some));
            }
        });
        return courses.stream()
                .map(c -> ends.get(c.net()) == null ? c : cut(c, ends.get(c.net())))
                .toList();
    }

    /** Points from the division on. */
    private static List<Point2D> outward(Layout.Course c) {
        List<Point2D> points = new ArrayList<>(c.points());
        if (c.from() != null) {
            java.util.Collections.reverse(points);
        }
        return points;
    }

    /** A point of the stretch that all share, not beyond the lines that leave it; null where they do not share one. */
    private static Point2D end(List<Layout.Course> some) {
        List<List<Point2D>> ways = some.stream().map(Junctions::outward).toList();
        double[] levels = ways.stream()
                .filter(w -> w.size() > 2)
                .mapToDouble(w -> w.get(1).getY())
                .distinct()
                .toArray();
        if (levels.length != 1) {
            return null;
        }
        double[] away = ways.stream()
                .mapToDouble(w -> w.get(w.size() > 2 ? 2 : 0).getX())
                .sorted()
                .toArray();
        double x = Math.max(
                away[0], Math.min(away[away.length - 1], ways.get(0).get(0).getX()));
        return new Point2D.Double(x, levels[0]);
    }

    private static Layout.Course cut(Layout.Course c, Point2D end) {
        List<Point2D> points = outward(c);
        points.set(0, end);
        if (points.size() > 2) {
            points.remove(1);
        }
        if (points.size() > 2 && points.get(1).distance(end) < NEAR_PT) {
            points.remove(1);
        }
        if (c.from() != null) {
            java.util.Collections.reverse(points);
        }
        return new Layout.Course(c.net(), c.from(), c.to(), points);
    }

    /** Where lines of a net go on in three directions or four. */
    static List<Point2D> dots(List<Layout.Course> courses) {
        List<Point2D> dots = new ArrayList<>();
        Map<Net, List<Layout.Course>> byNet = courses.stream()
                .collect(Collectors.groupingBy(Layout.Course::net, LinkedHashMap::new, Collectors.toList()));
        for (List<Layout.Course> net : byNet.values()) {
            for (Layout.Course c : net) {
                for (Point2D p : c.points()) {
                    if (directions(p, net) > 2 && dots.stream().noneMatch(d -> d.distance(p) < DIVISION_PT + NEAR_PT)) {
                        dots.add(p);
                    }
                }
            }
        }
        return dots;
    }

    private static int directions(Point2D at, List<Layout.Course> net) {
        boolean[] found = new boolean[4];
        for (Layout.Course c : net) {
            for (int i = 1; i < c.points().size(); i++) {
                Line2D s = new Line2D.Double(c.points().get(i - 1), c.points().get(i));
                if (s.ptSegDist(at) <= DIVISION_PT) {
                    found[0] |= Math.max(s.getX1(), s.getX2()) > at.getX() + DIVISION_PT;
                    found[1] |= Math.min(s.getX1(), s.getX2()) < at.getX() - DIVISION_PT;
                    found[2] |= Math.max(s.getY1(), s.getY2()) > at.getY() + DIVISION_PT;
                    found[3] |= Math.min(s.getY1(), s.getY2()) < at.getY() - DIVISION_PT;
                }
            }
        }
        int count = 0;
        for (boolean f : found) {
            count += f ? 1 : 0;
        }
        return count;
    }
}
