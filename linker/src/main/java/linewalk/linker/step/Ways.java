package linewalk.linker.step;

import java.util.ArrayDeque;
import java.util.Deque;

/** Volumes that oil passes on its way from where it starts to where it ends; dead ends beside the way are left out. */
final class Ways {

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
        return on;
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
