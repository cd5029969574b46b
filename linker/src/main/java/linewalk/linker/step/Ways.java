package linewalk.linker.step;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/**
 * Volumes that oil passes on its way from where it starts to where it ends: those on a way that passes nothing twice. Dead
 * ends beside the way, and rings that hang on one volume of it, are left out.
 */
final class Ways {

    private static final int SOURCE = -1;
    private static final int SINK = -2;

    private final Links links;
    private final boolean[] start;
    private final boolean[] end;
    private final boolean[] on;
    private final int with;

    private Ways(Links links, boolean[] start, boolean[] end, boolean[] on, int with) {
        this.links = links;
        this.start = start;
        this.end = end;
        this.on = on;
        this.with = with;
    }

    /** @param open volumes that may be passed, each known to lead to an end */
    static boolean[] between(Links links, boolean[] start, boolean[] end, boolean[] open, int with) {
        boolean[] on = links.downstream(start, open, with, 0);
        Ways ways = new Ways(links, start, end, on, with);
        ways.prune();
        ways.withoutRings();
        return on;
    }

    /** What lies on a simple way is in one block with an edge that closes the way from its end to its start. */
    private void withoutRings() {
        Graph<Integer, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
        graph.addVertex(SOURCE);
        graph.addVertex(SINK);
        for (int i = 0; i < on.length; i++) {
            if (on[i]) {
                graph.addVertex(i);
                if (start[i]) {
                    graph.addEdge(SOURCE, i);
                }
                if (end[i]) {
                    graph.addEdge(i, SINK);
                }
            }
        }
        for (int i = 0; i < on.length; i++) {
            for (int k = on[i] ? links.firstOut[i] : -1; k >= 0; k = links.nextOut[k]) {
                if (on[links.to[k]] && links.to[k] != i && links.has(k, with)) {
                    graph.addEdge(i, links.to[k]);
                }
            }
        }
        DefaultEdge closing = graph.addEdge(SOURCE, SINK);
        Set<Integer> way = new BiconnectivityInspector<>(graph)
                .getBlocks(SOURCE).stream()
                        .filter(b -> b.containsEdge(closing))
                        .findFirst()
                        .orElseThrow()
                        .vertexSet();
        for (int i = 0; i < on.length; i++) {
            on[i] &= way.contains(i);
        }
    }

    private void prune() {
        Deque<Integer> look = new ArrayDeque<>();
        for (int i = 0; i < on.length; i++) {
            if (on[i] && !passed(i)) {
                drop(i, look);
            }
        }
        while (!look.isEmpty()) {
            int i = look.pop();
            if (on[i] && !passed(i)) {
                drop(i, look);
            }
        }
    }

    private void drop(int i, Deque<Integer> look) {
        on[i] = false;
        for (int k = links.firstOut[i]; k >= 0; k = links.nextOut[k]) {
            if (on[links.to[k]]) {
                look.push(links.to[k]);
            }
        }
        for (int k = links.firstIn[i]; k >= 0; k = links.nextIn[k]) {
            if (on[links.from[k]]) {
                look.push(links.from[k]);
            }
        }
    }

    /** Entered from one neighbour and left to another; a start need not be entered, an end not be left. */
    private boolean passed(int i) {
        if (end[i] || start[i]) {
            return true;
        }
        int in = -1;
        boolean twoIn = false;
        for (int k = links.firstIn[i]; k >= 0 && !twoIn; k = links.nextIn[k]) {
            int u = links.from[k];
            if (on[u] && links.has(k, with) && u != in) {
                twoIn = in >= 0;
                in = u;
            }
        }
        if (in < 0) {
            return false;
        }
        for (int k = links.firstOut[i]; k >= 0; k = links.nextOut[k]) {
            int w = links.to[k];
            if (on[w] && links.has(k, with) && (twoIn || w != in)) {
                return true;
            }
        }
        return false;
    }
}
