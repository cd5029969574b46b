package linewalk.linker;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import linewalk.linker.Circuit.Spot;

/**
 * The least cost from each line to the end of the route, by how many of via are passed: Dijkstra backwards, without
 * minding that a walk may not use a line twice. So it is never more than what a real walk costs.
 */
final class Bounds {

    static final long NEVER = Long.MAX_VALUE;

    private record Back(int line, int passed, long cost) {}

    private record Entry(int node, long cost) implements Comparable<Entry> {
        @Override
        public int compareTo(Entry o) {
            return Long.compare(cost, o.cost);
        }
    }

    private final int phases;
    private final long[] cost;
    private final List<List<Back>> backwards = new ArrayList<>();

    Bounds(Moves moves, Route route) {
        Circuit circuit = moves.circuit;
        phases = route.via().size() + 1;
        cost = new long[circuit.lines.size() * phases];
        Arrays.fill(cost, NEVER);
        for (int i = 0; i < cost.length; i++) {
            backwards.add(null);
        }
        PriorityQueue<Entry> queue = new PriorityQueue<>();
        for (int line = 0; line < circuit.lines.size(); line++) {
            for (Spot s : circuit.ends(line)) {
                if (circuit.port(s.end()).filter(route::endsAt).isPresent()) {
                    relax(node(line, phases - 1), Cost.ELEMENT, queue);
                }
                moves.from(s).forEach(m -> note(m, route));
            }
        }
        settle(queue);
    }

    private int node(int line, int passed) {
        return line * phases + passed;
    }

    private void note(Move m, Route route) {
        for (int passed = 0; passed < phases; passed++) {
            int after = m.pass() == null ? passed : route.after(passed, m.pass().component());
            int to = node(m.enter().line(), after);
            if (backwards.get(to) == null) {
                backwards.set(to, new ArrayList<>());
            }
            backwards.get(to).add(new Back(m.leave().line(), passed, m.cost()));
        }
    }

    private void relax(int node, long c, PriorityQueue<Entry> queue) {
        if (c < cost[node]) {
            cost[node] = c;
            queue.add(new Entry(node, c));
        }
    }

    private void settle(PriorityQueue<Entry> queue) {
        while (!queue.isEmpty()) {
            Entry e = queue.remove();
            List<Back> in = backwards.get(e.node);
            if (e.cost == cost[e.node] && in != null) {
                in.forEach(b -> relax(node(b.line, b.passed), e.cost + b.cost, queue));
            }
        }
    }

    /** {@link #NEVER} where the end can't be reached. */
    long toEnd(int line, int passed) {
        return cost[node(line, passed)];
    }
}
