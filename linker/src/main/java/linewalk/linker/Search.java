package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import linewalk.linker.Circuit.Spot;

/**
 * The walks of least cost that use no line twice, best first. Partial walks are taken by their cost plus the least that
 * is left to the end; each line is entered by a bounded number of different walks, so the search ends on any set.
 */
final class Search {

    private static final int TRIES_PER_LINE = 200;
    private static final int MOST_TRIES = 200_000;

    /** A walk and the end of its last line where it stops. */
    record Arrival(Walk walk, Spot end) {}

    private record Entry(Walk walk, Spot end, long atLeast) implements Comparable<Entry> {
        @Override
        public int compareTo(Entry o) {
            int byCost = Long.compare(atLeast, o.atLeast);
            return byCost != 0 ? byCost : Walk.byNames(walk, o.walk);
        }
    }

    private record Place(int line, int passed) {}

    private final Moves moves;
    private final Route route;
    private final Bounds bounds;
    private final PriorityQueue<Entry> queue = new PriorityQueue<>();

    Search(Moves moves, Route route) {
        this.moves = moves;
        this.route = route;
        this.bounds = new Bounds(moves, route);
    }

    List<Arrival> best(int most) {
        List<Arrival> found = new ArrayList<>();
        Set<String> distinct = new HashSet<>();
        Map<Place, Integer> tries = new HashMap<>();
        starts(moves, route).forEach(this::push);
        for (int i = 0; i < MOST_TRIES && !queue.isEmpty() && found.size() < most; i++) {
            Entry e = queue.remove();
            if (e.end != null) {
                if (distinct.add(e.walk.names())) {
                    found.add(new Arrival(e.walk, e.end));
                }
            } else if (tries.merge(new Place(e.walk.at.line(), e.walk.passed), 1, Integer::sum) <= TRIES_PER_LINE) {
                expand(e.walk);
            }
        }
        return found;
    }

    static List<Walk> starts(Moves moves, Route route) {
        List<Walk> starts = new ArrayList<>();
        route.leaving().forEach(p -> moves.circuit.atPort(p).stream()
                .filter(moves::open)
                .forEach(s -> starts.add(Walk.start(s, Cost.ELEMENT + moves.lineCost(s)))));
        return starts;
    }

    private void push(Walk w) {
        long rest = bounds.toEnd(w.at.line(), w.passed);
        if (rest != Bounds.NEVER) {
            queue.add(new Entry(w, null, w.cost + rest));
        }
    }

    private void expand(Walk w) {
        for (Spot s : moves.circuit.ends(w.at.line())) {
            if (s == w.at) {
                continue;
            }
            boolean done = w.passed == route.via().size();
            if (done && moves.circuit.port(s.end()).filter(route::endsAt).isPresent()) {
                queue.add(new Entry(w, s, w.cost + Cost.ELEMENT));
            }
            for (Move m : moves.from(s)) {
                if (w.allows(m)) {
                    push(w.go(
                            m,
                            m.pass() == null
                                    ? w.passed
                                    : route.after(w.passed, m.pass().component())));
                }
            }
        }
    }
}
