package linewalk.importer.line;

import java.util.List;
import java.util.Set;
import linewalk.importer.page.Direction;

/**
 * Lines that programs cut in two where they cross: four ends that meet in two straight lines. Where the drafter sets a dot
 * at joints, those without one are crossings.
 */
final class CutCrossings {

    /** Fewer dots are no habit. */
    private static final int LEAST_DOTS = 3;

    /** How many joints have a dot for one that has none. */
    private static final int DOTTED = 4;

    /** Runs at a joint of lines, in tolerances: what is shorter belongs to a part that was not read. */
    private static final double LONG_TOL = 12;

    private static final double STRAIGHT = 0.995;

    private CutCrossings() {}

    /**
     * Parts the doubtful nodes in two, which are doubtful no more, if the sheet's dots tell.
     *
     * @param dotted nodes with a dot
     */
    static void part(List<Node> nodes, Set<Node> dotted, Set<Node> doubtful, double tolPt) {
        long dots = dotted.stream().filter(n -> n.runs().size() > 2).count();
        long bare = nodes.stream()
                .filter(n -> n.runs().size() > 2 && !dotted.contains(n) && !doubtful.contains(n))
                .filter(n -> n.runs().stream().allMatch(r -> r.lengthPt() > LONG_TOL * tolPt))
                .count();
        if (dots < LEAST_DOTS || dots < DOTTED * bare) {
            return;
        }
        for (Node n : List.copyOf(nodes)) {
            if (doubtful.contains(n) && !dotted.contains(n)) {
                List<Run> across = across(n);
                if (!across.isEmpty()) {
                    nodes.add(parted(n, across));
                    doubtful.remove(n);
                }
            }
        }
    }

    /** The runs of one of two straight lines through a node; empty where other runs meet there. */
    private static List<Run> across(Node n) {
        Direction one = n.runs().get(0).outward(n);
        List<Run> across = n.runs().stream()
                .filter(r -> Math.abs(one.along(r.outward(n))) < STRAIGHT)
                .toList();
        List<Run> along = n.runs().stream().filter(r -> !across.contains(r)).toList();
        return runThrough(n, across) && runThrough(n, along) ? across : List.of();
    }

    /** All in one straight line, on both sides of the node. */
    private static boolean runThrough(Node n, List<Run> runs) {
        if (runs.isEmpty()) {
            return false;
        }
        Direction one = runs.get(0).outward(n);
        return runs.stream().allMatch(r -> Math.abs(one.along(r.outward(n))) >= STRAIGHT && r.from() != r.to())
                && runs.stream().anyMatch(r -> one.along(r.outward(n)) < 0);
    }

    private static Node parted(Node n, List<Run> across) {
        Node other = new Node(n.place());
        n.runs().removeAll(across);
        for (Run r : across) {
            Run moved = new Run(
                    r.from() == n ? other : r.from(),
                    r.to() == n ? other : r.to(),
                    r.points(),
                    r.widthPt(),
                    r.dash(),
                    r.bridged());
            List<Run> atEnd = r.other(n).runs();
            atEnd.set(atEnd.indexOf(r), moved);
            other.runs().add(moved);
        }
        return other;
    }
}
