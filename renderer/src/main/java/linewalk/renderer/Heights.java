package linewalk.renderer;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * How high nodes and nets stand between tank (0) and actuators (1): each is the mean of its neighbours, as the potential
 * in a network of equal resistors is. So every part knows which of its lines leads up.
 */
final class Heights {

    static final double PUMP = 0.12;

    private static final int ROUNDS = 3000;
    private static final double STILL = 1e-7;

    private final List<int[]> nets;
    private final Double[] fixed;
    private final List<List<Integer>> netsOf = new ArrayList<>();
    private final double[] node;
    private final double[] net;

    /**
     * @param nets numbers of the nodes that each net joins; may be empty
     * @param fixed heights that are given, by node; null where they are to be found
     * @param grounded nets that a tank is on
     */
    Heights(List<int[]> nets, Double[] fixed, boolean[] grounded) {
        this.nets = nets;
        this.fixed = fixed.clone();
        node = new double[fixed.length];
        net = new double[nets.size()];
        for (int i = 0; i < node.length; i++) {
            netsOf.add(new ArrayList<>());
        }
        for (int n = 0; n < nets.size(); n++) {
            for (int i : nets.get(n)) {
                netsOf.get(i).add(n);
            }
        }
        raiseFarthest(grounded);
        Arrays.fill(net, 0.5);
        for (int i = 0; i < node.length; i++) {
            node[i] = this.fixed[i] == null ? 0.5 : this.fixed[i];
        }
        relax(grounded);
    }

    double ofNode(int i) {
        return node[i];
    }

    double ofNet(int n) {
        return net[n];
    }

    private void relax(boolean[] grounded) {
        double moved = 1;
        for (int round = 0; round < ROUNDS && moved > STILL; round++) {
            moved = 0;
            for (int n = 0; n < net.length; n++) {
                double sum = 0;
                for (int i : nets.get(n)) {
                    sum += node[i];
                }
                int weight = nets.get(n).length + (grounded[n] ? 1 : 0);
                double mean = weight == 0 ? 0.5 : sum / weight;
                moved = Math.max(moved, Math.abs(mean - net[n]));
                net[n] = mean;
            }
            for (int i = 0; i < node.length; i++) {
                if (fixed[i] == null && !netsOf.get(i).isEmpty()) {
                    node[i] = netsOf.get(i).stream()
                            .mapToDouble(n -> net[n])
                            .average()
                            .orElse(0.5);
                }
            }
        }
    }

    /** In a piece that has no actuator the node farthest from tank and pump stands highest. */
    private void raiseFarthest(boolean[] grounded) {
        boolean[] seen = new boolean[node.length];
        for (int i = 0; i < node.length; i++) {
            if (!seen[i]) {
                List<Integer> piece = walk(List.of(i), seen);
                if (piece.stream().noneMatch(k -> fixed[k] != null && fixed[k] == 1)) {
                    List<Integer> low = piece.stream()
                            .filter(k ->
                                    fixed[k] != null || netsOf.get(k).stream().anyMatch(n -> grounded[n]))
                            .toList();
                    List<Integer> order = walk(low.isEmpty() ? List.of(i) : low, new boolean[node.length]);
                    int far = order.get(order.size() - 1);
                    if (!low.contains(far)) {
                        fixed[far] = 1.0;
                    }
                }
            }
        }
    }

    /** Nodes reached, nearest first. */
    private List<Integer> walk(List<Integer> from, boolean[] seen) {
        List<Integer> order = new ArrayList<>();
        Deque<Integer> open = new ArrayDeque<>(from);
        from.forEach(i -> seen[i] = true);
        while (!open.isEmpty()) {
            int i = open.removeFirst();
            order.add(i);
            for (int n : netsOf.get(i)) {
                for (int k : nets.get(n)) {
                    if (!seen[k]) {
                        seen[k] = true;
                        open.addLast(k);
                    }
                }
            }
        }
        return order;
    }
}
