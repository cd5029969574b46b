package linewalk.linker.step;

import java.util.Arrays;

/** Directed ways between volumes, walked either way round; filled once and then read. */
final class Links {

    /** Oil under pressure may go here. */
    static final int FEED = 1;
    /** Oil on its way out may go here. */
    static final int DRAIN = 2;

    static final int BOTH = FEED | DRAIN;
    static final int THROTTLE = 4;
    /** Out of the load-holding side of a counterbalance valve. */
    static final int LOADED = 8;

    static final int REDUCE = 16;
    static final int INTENSIFY = 32;
    /** Through a part that always stands so. */
    static final int PASSIVE = 64;
    /** Through a passive part that is no valve. */
    static final int PIPE = 128;
    /** Through a shut-off valve. */
    static final int SHUT_OFF = 256;

    final int[] firstOut;
    final int[] firstIn;
    int[] from = new int[64];
    int[] to = new int[64];
    int[] flags = new int[64];
    int[] nextOut = new int[64];
    int[] nextIn = new int[64];
    /** Index of the part that joins them, or -1. */
    int[] part = new int[64];

    private int size;
    private int owned;

    Links(int nodes) {
        firstOut = new int[nodes];
        firstIn = new int[nodes];
        Arrays.fill(firstOut, -1);
        Arrays.fill(firstIn, -1);
    }

    void add(int u, int v, int flag) {
        if (u == v) {
            return;
        }
        if (size == from.length) {
            grow();
        }
        from[size] = u;
        to[size] = v;
        flags[size] = flag;
        part[size] = -1;
        nextOut[size] = firstOut[u];
        firstOut[u] = size;
        nextIn[size] = firstIn[v];
        firstIn[v] = size++;
    }

    void both(int u, int v, int flag) {
        add(u, v, flag);
        add(v, u, flag);
    }

    /** All links added since the last call lead through this part. */
    void belongTo(int index) {
        Arrays.fill(part, owned, size, index);
        owned = size;
    }

    int count() {
        return size;
    }

    private void grow() {
        int more = 2 * size;
        from = Arrays.copyOf(from, more);
        to = Arrays.copyOf(to, more);
        flags = Arrays.copyOf(flags, more);
        nextOut = Arrays.copyOf(nextOut, more);
        nextIn = Arrays.copyOf(nextIn, more);
        part = Arrays.copyOf(part, more);
    }

    boolean has(int link, int flag) {
        return (flags[link] & flag) != 0;
    }

    /** All that can be reached from here over links with all of one flag and none of the other's bits. */
    boolean[] downstream(boolean[] start, boolean[] through, int with, int without) {
        return reach(start, through, with, without, false);
    }

    /** All from which here can be reached. */
    boolean[] upstream(boolean[] start, boolean[] through, int with, int without) {
        return reach(start, through, with, without, true);
    }

    /** The start is always part of it; every other volume must be one to go through (null: all are). */
    private boolean[] reach(boolean[] start, boolean[] through, int with, int without, boolean up) {
        boolean[] reached = start.clone();
        int[] stack = new int[reached.length];
        int top = 0;
        for (int i = 0; i < start.length; i++) {
            if (start[i]) {
                stack[top++] = i;
            }
        }
        int[] first = up ? firstIn : firstOut;
        int[] next = up ? nextIn : nextOut;
        int[] other = up ? from : to;
        while (top > 0) {
            for (int k = first[stack[--top]]; k >= 0; k = next[k]) {
                int n = other[k];
                boolean open = (flags[k] & with) == with && (flags[k] & without) == 0;
                if (open && !reached[n] && (through == null || through[n])) {
                    reached[n] = true;
                    stack[top++] = n;
                }
            }
        }
        return reached;
    }
}
