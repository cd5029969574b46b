package linewalk.renderer;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A crossing between two cuttings: a line through the lanes where both lie on one page, else a letter at each end.
 *
 * @param letter null where a line is drawn
 * @param start from the reference out of its cutting
 * @param way empty where letters stand instead
 */
record Connector(String letter, Panel from, Panel to, List<Point2D> start, List<Point2D> end, List<Point2D> way) {

    /** The whole line from reference to reference. */
    List<Point2D> whole() {
        List<Point2D> all = new ArrayList<>(start);
        all.addAll(way);
        all.add(end.get(1));
        all.add(end.get(0));
        return plain(all);
    }

    /** Without points that lie on one straight line with their neighbours, spurs included. */
    private static List<Point2D> plain(List<Point2D> points) {
        List<Point2D> plain = new ArrayList<>();
        for (Point2D p : points) {
            int n = plain.size();
            if (n > 1 && inLine(plain.get(n - 2), plain.get(n - 1), p)) {
                plain.set(n - 1, p);
            } else if (n == 0 || plain.get(n - 1).distance(p) > 0.01) {
                plain.add(p);
            }
        }
        return plain;
    }

    private static boolean inLine(Point2D a, Point2D b, Point2D c) {
        return Math.abs(a.getX() - b.getX()) < 0.01 && Math.abs(b.getX() - c.getX()) < 0.01
                || Math.abs(a.getY() - b.getY()) < 0.01 && Math.abs(b.getY() - c.getY()) < 0.01;
    }

    boolean isDrawn() {
        return !way.isEmpty();
    }

    /** @param router null where the cuttings lie on different pages */
    static Connector between(Panel from, Panel to, LaneRouter router, MatchMarks marks, String key) {
        List<Point2D> start = from.exit().out(from);
        List<Point2D> end = to.entry().out(to);
        Optional<List<Point2D>> way = router == null ? Optional.empty() : router.route(start.get(1), end.get(1));
        String letter = way.isPresent() ? null : marks.letter(key);
        return new Connector(letter, from, to, start, end, way.orElse(List.of()));
    }
}
