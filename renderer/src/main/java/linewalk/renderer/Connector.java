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
        return all;
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
