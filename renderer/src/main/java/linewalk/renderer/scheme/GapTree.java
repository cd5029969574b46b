package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.elk.alg.layered.graph.LNode;
import org.eclipse.elk.alg.layered.graph.LPort;

/**
 * What of a net hangs together in the gap between two layers: ports of the layer before and of the layer after. The places
 * of nodes in their layers are kept in {@link LNode#id}.
 */
final class GapTree {

    /** More than any port lies from its node's corner, in the kernel's units. */
    private static final double FAR = 1e7;

    /** Counted as the layer before it. */
    final int gap;

    private final List<LPort> before = new ArrayList<>();
    private final List<LPort> after = new ArrayList<>();
    private final List<LPort> beforeWithoutTurns = new ArrayList<>();
    private final List<LPort> afterWithoutTurns = new ArrayList<>();

    GapTree(int gap) {
        this.gap = gap;
    }

    /** @param atTurn the port is of a point at which lines only turn back */
    void add(LPort port, boolean isBefore, boolean atTurn) {
        (isBefore ? before : after).add(port);
        if (!atTurn) {
            (isBefore ? beforeWithoutTurns : afterWithoutTurns).add(port);
        }
    }

    /**
     * Round the edge of the gap, ports of the two trees change k times from the one to the other and k times back: the
     * first divides the gap, and the second has ends in k of its parts. It takes k - 1 crossings to join them.
     */
    int crossings(GapTree other, boolean withTurns) {
        Round round = new Round();
        if (withTurns) {
            round.along(before, other.before);
            round.back(after, other.after);
        } else {
            round.along(beforeWithoutTurns, other.beforeWithoutTurns);
            round.back(afterWithoutTurns, other.afterWithoutTurns);
        }
        return round.crossings();
    }

    private static double[] sorted(List<LPort> ports) {
        double[] keys = new double[ports.size()];
        for (int i = 0; i < keys.length; i++) {
            LPort p = ports.get(i);
            keys[i] = p.getNode().id * FAR + p.getPosition().y;
        }
        Arrays.sort(keys);
        return keys;
    }

    /** Counts how often ports change between two trees. */
    private static final class Round {

        private boolean isEmpty = true;
        private boolean first;
        private boolean last;
        private int changes;

        void along(List<LPort> some, List<LPort> others) {
            double[] a = sorted(some);
            double[] b = sorted(others);
            for (int i = 0, k = 0; i < a.length || k < b.length; ) {
                boolean isOfFirst = k == b.length || i < a.length && a[i] <= b[k];
                pass(isOfFirst);
                i += isOfFirst ? 1 : 0;
                k += isOfFirst ? 0 : 1;
            }
        }

        void back(List<LPort> some, List<LPort> others) {
            double[] a = sorted(some);
            double[] b = sorted(others);
            for (int i = a.length, k = b.length; i > 0 || k > 0; ) {
                boolean isOfFirst = k == 0 || i > 0 && a[i - 1] > b[k - 1];
                pass(isOfFirst);
                i -= isOfFirst ? 1 : 0;
                k -= isOfFirst ? 0 : 1;
            }
        }

        private void pass(boolean isOfFirst) {
            changes += !isEmpty && isOfFirst != last ? 1 : 0;
            first = isEmpty ? isOfFirst : first;
            last = isOfFirst;
            isEmpty = false;
        }

        int crossings() {
            return Math.max(0, (changes + (first == last ? 0 : 1)) / 2 - 1);
        }
    }
}
