package linewalk.linker.step;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;

/**
 * Which way a check valve opens where the drawing was not read so far: away from the pump whose oil comes to it first
 * over nothing but pipes, filters, shut-offs and other checks. A check towards the tank side may be there to let oil
 * in, so nothing is taken of it.
 */
final class CheckSides {

    private final List<List<Part>> at = new ArrayList<>();
    private final int[] inlet;
    private final int[] distance;

    private CheckSides(Net net) {
        for (int i = 0; i < net.size; i++) {
            at.add(List.of());
        }
        for (Part p : net.parts) {
            if (passes(p)) {
                for (int v : p.through()) {
                    if (at.get(v).isEmpty()) {
                        at.set(v, new ArrayList<>());
                    }
                    at.get(v).add(p);
                }
            }
        }
        inlet = new int[net.parts.size()];
        distance = new int[net.size];
        Arrays.fill(inlet, -1);
    }

    private static boolean passes(Part p) {
        Component c = p.component();
        boolean kind = Kinds.PIPES.contains(c.kind()) || c.kind() == Kind.SHUT_OFF_VALVE || untold(p);
        return kind && p.through().length == 2 && !c.normallyClosed();
    }

    private static boolean untold(Part p) {
        return p.kind() == Kind.CHECK_VALVE && p.component().positions().isEmpty();
    }

    static int[] inlets(Net net, boolean[] outlets) {
        CheckSides sides = new CheckSides(net);
        boolean[] tankSide = sides.tankSide(net);
        int[] distance = sides.distance;
        Arrays.fill(distance, -1);
        Deque<Integer> queue = new ArrayDeque<>();
        for (int i = 0; i < outlets.length; i++) {
            if (outlets[i] && !tankSide[i]) {
                distance[i] = 0;
                queue.add(i);
            }
        }
        while (!queue.isEmpty()) {
            sides.onward(queue.remove(), queue, tankSide);
        }
        return sides.inlet;
    }

    private void onward(int u, Deque<Integer> queue, boolean[] tankSide) {
        for (Part p : at.get(u)) {
            int v = other(p, u);
            if (tankSide[v] || untold(p) && inlet[p.index()] == v || inlet[p.index()] == -2) {
                continue;
            }
            boolean tie = untold(p) && distance[v] >= 0 && distance[v] <= distance[u];
            if (untold(p)) {
                inlet[p.index()] = tie ? -2 : u;
            }
            if (distance[v] < 0) {
                distance[v] = distance[u] + 1;
                queue.add(v);
            }
        }
    }

    private static int other(Part p, int u) {
        int[] ends = p.through();
        return ends[0] == u ? ends[1] : ends[0];
    }

    /** Nothing but pipes and open shut-offs between here and a tank. */
    private boolean[] tankSide(Net net) {
        boolean[] found = net.tank.clone();
        Deque<Integer> open = new ArrayDeque<>();
        for (int i = 0; i < found.length; i++) {
            if (found[i]) {
                open.push(i);
            }
        }
        while (!open.isEmpty()) {
            int u = open.pop();
            for (Part p : at.get(u)) {
                int v = other(p, u);
                if (!untold(p) && !found[v]) {
                    found[v] = true;
                    open.push(v);
                }
            }
        }
        return found;
    }
}
