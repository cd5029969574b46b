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

    private record Way(int from, int to) {}

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
    int add(int from, int to) {
        int number = ways.size();
        ways.add(new Way(from, to));
        out.get(from).add(number);
        in.get(to).add(number);
        return number;
    }

    boolean leads(int source, int sink) {
        return source == sink || path(source, sink, new boolean[nodes]) != null;
    }

    /** By number of the way; surely where oil comes to it and goes on from it without passing a volume twice. */
    Taken[] between(int source, int sink) {
        Taken[] taken = new Taken[ways.size()];
        boolean[] after = reached(source, true);
        boolean[] before = reached(sink, false);
        for (int k = 0; k < taken.length; k++) {
            Way w = ways.get(k);
            boolean inside = after[w.from] && before[w.to] && w.from != sink && w.to != source;
            taken[k] = inside ? taken(w, source, sink) : Taken.NOT;
        }
        return taken;
    }

    private Taken taken(Way w, int source, int sink) {
        List<Integer> to = path(source, w.from, avoiding(List.of(w.to)));
        List<Integer> on = path(w.to, sink, avoiding(List.of(w.from)));
        if (to == null || on == null) {
            return Taken.NOT;
        }
        boolean apart = path(w.to, sink, avoiding(to)) != null || path(source, w.from, avoiding(on)) != null;
        return apart ? Taken.SURELY : Taken.PERHAPS;
    }

    private boolean[] avoiding(List<Integer> some) {
        boolean[] avoided = new boolean[nodes];
        some.forEach(i -> avoided[i] = true);
        return avoided;
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

    /** The shortest, with both ends; null where there is none. */
    private List<Integer> path(int start, int goal, boolean[] avoided) {
        if (avoided[start] || avoided[goal]) {
            return null;
        }
        int[] before = new int[nodes];
        Arrays.fill(before, -1);
        before[start] = start;
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty() && before[goal] < 0) {
            int at = open.removeFirst();
            for (int k : at == tank && at != start ? List.<Integer>of() : out.get(at)) {
                int next = ways.get(k).to;
                if (before[next] < 0 && !avoided[next]) {
                    before[next] = at;
                    open.addLast(next);
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
