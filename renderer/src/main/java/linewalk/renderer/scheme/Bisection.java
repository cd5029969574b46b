package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Divides a part in two where few nets are cut: nodes are put in the order of the graph's second eigenvector (Fiedler
 * 1973), and the order is cut where the fewest nets cross, near the share that was asked for.
 */
final class Bisection {

    /** How far the cut may lie from the share that was asked for, as a share of all. */
    private static final double PLAY = 0.2;

    private static final int ROUNDS = 400;
    private static final int WAYS = 8;

    record Halves(BitSet first, BitSet second) {}

    private final Numbered scheme;
    private final int[] nodes;
    private final int[][] nets;
    private final int[] netsOf;
    private final int[] degree;
    private final int[] order;

    /** @param part of two nodes or more */
    Bisection(Numbered scheme, BitSet part) {
        this.scheme = scheme;
        nodes = part.stream().toArray();
        netsOf = new int[nodes.length];
        degree = new int[nodes.length];
        List<int[]> joining = new ArrayList<>();
        scheme.netsOf(part).stream().forEach(n -> {
            int[] here = IntStream.range(0, nodes.length)
                    .filter(i -> scheme.nodesOf(n).get(nodes[i]))
                    .toArray();
            Arrays.stream(here).forEach(i -> netsOf[i]++);
            if (here.length > 1) {
                Arrays.stream(here).forEach(i -> degree[i]++);
                joining.add(here);
            }
        });
        nets = joining.toArray(int[][]::new);
        order = order();
    }

    /**
     * Some ways to divide, the best first, each made when it is asked for. Both halves have a node or more.
     *
     * @param share of the first half by area, 0 to 1
     */
    List<Supplier<Halves>> ways(double share) {
        return cuts(share).stream()
                .<Supplier<Halves>>map(cut -> () -> halves(cut))
                .toList();
    }

    /** What would be nothing but ends of lines in one half stands with the lines in the other. */
    private Halves halves(int cut) {
        BitSet first = new BitSet();
        BitSet second = new BitSet();
        for (int i = 0; i < order.length; i++) {
            (i < cut ? first : second).set(order[i]);
        }
        BitSet ofFirst = loose(first);
        BitSet ofSecond = loose(second);
        if (!ofFirst.equals(first) && !ofSecond.equals(second)) {
            first.andNot(ofFirst);
            second.andNot(ofSecond);
            first.or(ofSecond);
            second.or(ofFirst);
        }
        return new Halves(numbers(first), numbers(second));
    }

    /** Nodes of a half that lines join to nodes of the other half and, in their own, to ends alone. */
    private BitSet loose(BitSet half) {
        BitSet all = new BitSet();
        for (int[] net : nets) {
            int[] here = Arrays.stream(net).filter(half::get).toArray();
            if (here.length < net.length && Arrays.stream(here).allMatch(i -> netsOf[i] == 1)) {
                Arrays.stream(here).forEach(all::set);
            }
        }
        return all;
    }

    private BitSet numbers(BitSet some) {
        BitSet numbers = new BitSet();
        some.stream().forEach(i -> numbers.set(nodes[i]));
        return numbers;
    }

    /** Power iteration on the averaging walk, the constant part taken out in each round. */
    private int[] order() {
        int n = nodes.length;
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = i - (n - 1) / 2.0;
        }
        for (int round = 0; round < ROUNDS; round++) {
            x = averaged(x);
        }
        double[] at = x;
        return IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> at[i]))
                .mapToInt(i -> i)
                .toArray();
    }

    private double[] averaged(double[] x) {
        double[] y = new double[x.length];
        for (int[] net : nets) {
            double sum = 0;
            for (int i : net) {
                sum += x[i];
            }
            for (int i : net) {
                y[i] += sum / net.length;
            }
        }
        double weight = 0;
        double mean = 0;
        for (int i = 0; i < y.length; i++) {
            y[i] = degree[i] == 0 ? x[i] : 0.5 * x[i] + 0.5 * y[i] / degree[i];
            mean += y[i] * Math.max(1, degree[i]);
            weight += Math.max(1, degree[i]);
        }
        return normal(y, mean / weight);
    }

    private static double[] normal(double[] y, double mean) {
        double most = 0;
        for (int i = 0; i < y.length; i++) {
            y[i] -= mean;
            most = Math.max(most, Math.abs(y[i]));
        }
        for (int i = 0; i < y.length && most > 0; i++) {
            y[i] /= most;
        }
        return y;
    }

    /** Where to cut the order, best first. */
    private List<Integer> cuts(double share) {
        double total = Arrays.stream(nodes).mapToDouble(this::area).sum();
        int[] left = new int[nets.length];
        double[] cost = new double[order.length];
        double sum = 0;
        for (int cut = 1; cut < order.length; cut++) {
            int node = order[cut - 1];
            sum += area(nodes[node]);
            int crossed = 0;
            for (int n = 0; n < nets.length; n++) {
                left[n] += Arrays.binarySearch(nets[n], node) >= 0 ? 1 : 0;
                crossed += left[n] > 0 && left[n] < nets[n].length ? 1 : 0;
            }
            double off = Math.abs(sum / total - share);
            cost[cut] = crossed + off * 4 + (off > PLAY ? 1000 * off : 0);
        }
        return IntStream.range(1, order.length)
                .boxed()
                .sorted(Comparator.comparingDouble(cut -> cost[cut]))
                .limit(WAYS)
                .toList();
    }

    private double area(int node) {
        Size size = scheme.node(node).size();
        return size.widthPt() * size.heightPt();
    }
}
