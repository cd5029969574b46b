package linewalk.renderer;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.renderer.scheme.Layout;
import linewalk.renderer.scheme.Net;

/** The courses of one net as they lie on the page, cut where they come together. */
final class NetTree {

    private static final double NEAR_PT = 0.5;

    /** A straight piece between two points, by their numbers. */
    record Piece(int from, int to) {}

    private final List<Point2D> points = new ArrayList<>();
    private final Set<Piece> pieces = new LinkedHashSet<>();
    private final Map<Integer, Set<Net.Meeting>> ends = new LinkedHashMap<>();

    NetTree(List<Layout.Course> courses) {
        for (Layout.Course c : courses) {
            c.points().forEach(this::number);
            end(c.from(), c.points().get(0));
            end(c.to(), c.points().get(c.points().size() - 1));
        }
        for (Layout.Course c : courses) {
            for (int i = 1; i < c.points().size(); i++) {
                cut(c.points().get(i - 1), c.points().get(i));
            }
        }
    }

    private int number(Point2D p) {
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).distance(p) < NEAR_PT) {
                return i;
            }
        }
        points.add(p);
        return points.size() - 1;
    }

    private void end(Net.Meeting meeting, Point2D at) {
        if (meeting != null) {
            ends.computeIfAbsent(number(at), k -> new LinkedHashSet<>()).add(meeting);
        }
    }

    /** The points of the net on a straight stretch, from one end to the other. */
    List<Point2D> on(Point2D p, Point2D q) {
        return points.stream()
                .filter(x -> Line2D.ptSegDist(p.getX(), p.getY(), q.getX(), q.getY(), x.getX(), x.getY()) < NEAR_PT)
                .sorted((a, b) -> Double.compare(a.distance(p), b.distance(p)))
                .toList();
    }

    private void cut(Point2D p, Point2D q) {
        List<Point2D> on = on(p, q);
        for (int i = 1; i < on.size(); i++) {
            int a = number(on.get(i - 1));
            int b = number(on.get(i));
            if (!pieces.contains(new Piece(b, a))) {
                pieces.add(new Piece(a, b));
            }
        }
    }

    /** The piece on which a point lies, or null. */
    Piece at(Point2D p) {
        return pieces.stream()
                .filter(x -> Line2D.ptSegDist(
                                points.get(x.from).getX(),
                                points.get(x.from).getY(),
                                points.get(x.to).getX(),
                                points.get(x.to).getY(),
                                p.getX(),
                                p.getY())
                        < NEAR_PT)
                .findFirst()
                .orElse(null);
    }

    Point2D from(Piece piece) {
        return points.get(piece.from);
    }

    Point2D to(Piece piece) {
        return points.get(piece.to);
    }

    /** The meetings that hang on one end of a piece, without it; null where that comes round to its other end. */
    Set<Net.Meeting> beyond(Piece piece, boolean atTo) {
        Set<Integer> reached = new HashSet<>(Set.of(atTo ? piece.to : piece.from));
        boolean more = true;
        while (more) {
            more = false;
            for (Piece x : pieces) {
                boolean joins = !x.equals(piece) && (reached.contains(x.from) || reached.contains(x.to));
                more |= joins && (reached.add(x.from) | reached.add(x.to));
            }
        }
        if (reached.contains(atTo ? piece.from : piece.to)) {
            return null;
        }
        Set<Net.Meeting> meetings = new LinkedHashSet<>();
        reached.forEach(i -> meetings.addAll(ends.getOrDefault(i, Set.of())));
        return meetings;
    }
}
