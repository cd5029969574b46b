package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Divides nodes in two where few nets are cut: nodes are put in the order of the graph's second eigenvector (Fiedler
 * 1973), and the order is cut where the fewest nets cross, near the share that was asked for.
 */
final class Bisection {

    /** How far the cut may lie from the share that was asked for, as a share of all. */
    private static final double PLAY = 0.2;

    private static final int ROUNDS = 400;
    private static final int WAYS = 8;

    record Halves(Set<Node> first, Set<Node> second) {}

    private final List<Node> nodes;
    private final List<List<Integer>> nets = new ArrayList<>();

    private Bisection(List<Node> nodes, List<Net> all) {
        this.nodes = nodes;
        Map<Node, Integer> index = new HashMap<>();
        nodes.forEach(n -> index.put(n, index.size()));
        for (Net net : all) {
            List<Integer> here = net.meetings().stream()
                    .filter(m -> index.containsKey(m.node()))
                    .map(m -> index.get(m.node()))
                    .distinct()
                    .toList();
            if (here.size() > 1) {
                nets.add(here);
            }
        }
    }

    /**
     * Some ways to divide, the best first. Both halves have a node or more.
     *
     * @param nodes two or more
     * @param share of the first half by area, 0 to 1
     */
    static List<Halves> of(List<Node> nodes, List<Net> nets, double share) {
        Bisection b = new Bisection(nodes, nets);
        List<Integer> order = b.order();
        return b.cuts(order, share).stream()
                .map(cut -> new Halves(b.nodes(order.subList(0, cut)), b.nodes(order.subList(cut, order.size()))))
                .toList();
    }

    private Set<Node> nodes(List<Integer> some) {
        return some.stream().map(nodes::get).collect(Collectors.toSet());
    }

    /** Power iteration on the averaging walk, the constant part taken out in each round. */
    private List<Integer> order() {
        int n = nodes.size();
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = i - (n - 1) / 2.0;
        }
        double[] degree = new double[n];
        nets.forEach(net -> net.forEach(i -> degree[i] += 1));
        for (int round = 0; round < ROUNDS; round++) {
            x = averaged(x, degree);
        }
        double[] at = x;
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            order.add(i);
        }
        order.sort(Comparator.<Integer>comparingDouble(i -> at[i]).thenComparing(i -> i));
        return order;
    }

    private double[] averaged(double[] x, double[] degree) {
        double[] y = new double[x.length];
        for (List<Integer> net : nets) {
            double mean = net.stream().mapToDouble(i -> x[i]).average().orElse(0);
            net.forEach(i -> y[i] += mean);
        }
        double weight = 0;
        double mean = 0;
        for (int i = 0; i < y.length; i++) {
            y[i] = degree[i] == 0 ? x[i] : 0.5 * x[i] + 0.5 * y[i] / degree[i];
            mean += y[i] * Math.max(1, degree[i]);
            weight += Math.max(1, degree[i]);
        }
        double most = 0;
        for (int i = 0; i < y.length; i++) {
            y[i] -= mean / weight;
            most = Math.max(most, Math.abs(y[i]));
        }
        for (int i = 0; i < y.length && most > 0; i++) {
            y[i] /= most;
        }
        return y;
    }

    /** Where to cut the order, best first. */
    private List<Integer> cuts(List<Integer> order, double share) {
        double total = nodes.stream().mapToDouble(Bisection::area).sum();
        Map<Integer, Double> cost = new HashMap<>();
        double sum = 0;
        for (int cut = 1; cut < order.size(); cut++) {
            sum += area(nodes.get(order.get(cut - 1)));
            double off = Math.abs(sum / total - share);
            Set<Integer> first = new HashSet<>(order.subList(0, cut));
            long crossed = nets.stream()
                    .filter(net -> net.stream().anyMatch(first::contains) && !first.containsAll(net))
                    .count();
            cost.put(cut, crossed + off * 4 + (off > PLAY ? 1000 * off : 0));
        }
        return cost.keySet().stream()
                .sorted(Comparator.<Integer>comparingDouble(cost::get).thenComparing(cut -> cut))
                .limit(WAYS)
                .toList();
    }

    private static double area(Node n) {
        return n.figure().widthPt() * n.figure().heightPt();
    }
}
