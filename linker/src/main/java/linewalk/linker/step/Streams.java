package linewalk.linker.step;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/** Ways between volumes that oil may take, and which of them lie between a place that gives oil and one that takes it. */
final class Streams {

    /** How surely oil takes a way. */
    enum Taken {
        NOT,
        PERHAPS,
        SURELY
    }

    /** When oil that comes to a way goes on over it. */
    enum Need {
        /** Wherever it may. */
        ALWAYS,
        /** Unless it comes past it, or to the tank moving nothing. */
        NO_BYPASS,
        /** Only where it can go nowhere else. */
        NOTHING_ELSE,
        /** What it moves may have come to its end: never surely. */
        NEVER
    }

    /** @param moves over what moves a load */
    private record Way(int from, int to, Need need, boolean moves) {}

    private final int nodes;
    /** Oil ends here: no way leads through. */
    private final int tank;

    private final List<Way> ways = new ArrayList<>();
    private final List<List<Integer>> out = new ArrayList<>();
    private final List<List<Integer>> in = new ArrayList<>();

    Streams(int nodes, int tank) {
        this.nodes = nodes;
        this.tank = tank;
        for (int i = 0; i < nodes; i++) {
            out.add(new ArrayList<>());
            in.add(new ArrayList<>());
        }
    }

    /** Its number: ways are numbered in the order in which they are added. */
    int add(int from, int to, Need need, boolean moves) {
        int number = ways.size();
        ways.add(new Way(from, to, need, moves));
        out.get(from).add(number);
        in.get(to).add(number);
        return number;
    }

    /** Whether oil comes from one volume to another: surely where it need not move what may have come to its end. */
    Taken leads(int source, int sink) {
        boolean[] all = new boolean[ways.size()];
        Arrays.fill(all, true);
        if (path(source, sink, List.of(), all) == null) {
            return Taken.NOT;
        }
        for (int k = 0; k < all.length; k++) {
            all[k] = ways.get(k).need != Need.NEVER;
        }
        return path(source, sink, List.of(), all) == null ? Taken.PERHAPS : Taken.SURELY;
    }

    /** By number of the way; surely where oil comes to it and goes on from it without passing a volume twice. */
    Taken[] between(int source, int sink) {
        Taken[] taken = new Taken[ways.size()];
        boolean[] after = reached(source, true);
        boolean[] before = reached(sink, false);
        boolean[] all = new boolean[taken.length];
        boolean[] sure = new boolean[taken.length];
        for (int k = 0; k < taken.length; k++) {
            all[k] = after[ways.get(k).from] && before[ways.get(k).to];
        }
        for (int k = 0; k < taken.length; k++) {
            sure[k] = all[k] && isTaken(k, all, sink);
        }
        for (int k = 0; k < taken.length; k++) {
            taken[k] = all[k] ? taken(k, source, sink, all, sure) : Taken.NOT;
        }
        return taken;
    }

    private boolean isTaken(int way, boolean[] all, int sink) {
        Way w = ways.get(way);
        boolean[] others = all.clone();
        others[way] = false;
        boolean[] idle = others.clone();
        for (int k = 0; k < idle.length; k++) {
            idle[k] &= !ways.get(k).moves;
        }
        return switch (w.need) {
            case ALWAYS -> true;
            case NO_BYPASS ->
                path(w.from, w.to, List.of(), others) == null && path(w.from, sink, List.of(w.to), idle) == null;
            case NOTHING_ELSE -> path(w.from, sink, List.of(), others) == null;
            case NEVER -> false;
        };
    }

    private Taken taken(int way, int source, int sink, boolean[] all, boolean[] sure) {
        Way w = ways.get(way);
        List<Integer> to = List.of(w.to);
        List<Integer> from = List.of(w.from);
        if (path(source, w.from, to, all) == null || path(w.to, sink, from, all) == null) {
            return Taken.NOT;
        }
        List<Integer> before = path(source, w.from, to, sure);
        List<Integer> after = path(w.to, sink, from, sure);
        boolean apart = before != null
                && after != null
                && (path(w.to, sink, before, sure) != null || path(source, w.from, after, sure) != null);
        return sure[way] && apart ? Taken.SURELY : Taken.PERHAPS;
    }

    private boolean[] reached(int start, boolean onward) {
        boolean[] reached = new boolean[nodes];
        reached[start] = true;
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            int at = open.removeFirst();
            for (int k : at == tank && at != start ? List.<Integer>of() : (onward ? out : in).get(at)) {
                int next = onward ? ways.get(k).to : ways.get(k).from;
                if (!reached[next]) {
                    reached[next] = true;
                    open.addLast(next);
                }
            }
        }
        return reached;
    }

    /** The shortest over some ways past some volumes, with both ends; null where there is none. */
    private List<Integer> path(int start, int goal, List<Integer> avoided, boolean[] open) {
        if (avoided.contains(start) || avoided.contains(goal)) {
            return null;
        }
        int[] before = new int[nodes];
        Arrays.fill(before, -1);
        avoided.forEach(i -> before[i] = i);
        before[start] = start;
        Deque<Integer> look = new ArrayDeque<>(List.of(start));
        while (!look.isEmpty() && before[goal] < 0) {
            int at = look.removeFirst();
            for (int k : at == tank && at != start ? List.<Integer>of() : out.get(at)) {
                int next = ways.get(k).to;
                if (open[k] && before[next] < 0) {
                    before[next] = at;
                    look.addLast(next);
                }
            }
        }
        if (before[goal] < 0) {
            return null;
        }
        List<Integer> path = new ArrayList<>(List.of(goal));
        for (int at = goal; at != start; at = before[at]) {
            path.add(before[at]);
        }
        return path;
    }
}
