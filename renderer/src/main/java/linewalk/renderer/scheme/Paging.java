package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Divides a scheme into pages, each of which fits the paper at full size. Nets that run over several pages get a match
 * mark on each.
 */
public final class Paging {

    /** Makes the mark of a net at which it goes on on other pages. */
    @FunctionalInterface
    public interface MatchMark {
        /**
         * @param otherPages counted from 0
         * @param above the mark stands above the nodes that the net joins on this page
         */
        Figure mark(Net net, List<Integer> otherPages, boolean above);
    }

    /** Share of a page that fields can cover: lines take the rest. Measured on the demo's circuits. */
    private static final double MOST_COVERED = 0.62;

    private static final String MATCH = "match";

    private final Scheme scheme;
    private final double widthPt;
    private final double heightPt;
    private final MatchMark marks;
    private final List<Set<Node>> pages = new ArrayList<>();

    private Paging(Scheme scheme, double widthPt, double heightPt, MatchMark marks) {
        this.scheme = scheme;
        this.widthPt = widthPt;
        this.heightPt = heightPt;
        this.marks = marks;
    }

    /**
     * At least one page; a single node that is larger than the paper has a page of its own.
     *
     * @param widthPt of the picture's field on the paper
     */
    public static List<Layout> of(Scheme scheme, double widthPt, double heightPt, MatchMark marks) {
        Paging paging = new Paging(scheme, widthPt, heightPt, marks);
        paging.divide(scheme.nodes());
        return paging.laidOut();
    }

    private void divide(List<Node> nodes) {
        double covered = nodes.stream().mapToDouble(Paging::area).sum() / (widthPt * heightPt * MOST_COVERED);
        if (nodes.size() <= 1 || covered <= 1 && fits(Layering.of(part(new HashSet<>(nodes), List.of())))) {
            pages.add(new HashSet<>(nodes));
            return;
        }
        int most = Math.max(2, (int) Math.ceil(covered));
        Bisection.Halves halves = Bisection.of(nodes, scheme.nets(), (most / 2) / (double) most);
        divide(halves.first());
        divide(halves.second());
    }

    private static double area(Node n) {
        return (n.figure().widthPt() + 16) * (n.figure().heightPt() + 24);
    }

    private boolean fits(Layout l) {
        return l.widthPt() <= widthPt && l.heightPt() <= heightPt;
    }

    /** Match marks make a page larger: where one no longer fits, it is divided further. */
    private List<Layout> laidOut() {
        for (int p = 0; p < pages.size(); p++) {
            Layout l = Layering.of(part(pages.get(p), pages));
            if (!fits(l) && pages.get(p).size() > 1) {
                Set<Node> tooMuch = pages.remove(p);
                List<Node> ordered =
                        scheme.nodes().stream().filter(tooMuch::contains).toList();
                Bisection.Halves halves = Bisection.of(ordered, scheme.nets(), 0.5);
                pages.add(p, new HashSet<>(halves.second()));
                pages.add(p, new HashSet<>(halves.first()));
                return laidOut();
            }
        }
        List<Layout> all = new ArrayList<>();
        for (Set<Node> page : pages) {
            all.add(Layering.of(part(page, pages)));
        }
        return all;
    }

    /** The scheme's nodes on one page with their nets, and match marks where nets go on elsewhere. */
    private Scheme part(Set<Node> page, List<Set<Node>> all) {
        List<Node> nodes =
                new ArrayList<>(scheme.nodes().stream().filter(page::contains).toList());
        List<Net> nets = new ArrayList<>();
        for (Net net : scheme.nets()) {
            List<Net.Meeting> here = new ArrayList<>(
                    net.meetings().stream().filter(m -> page.contains(m.node())).toList());
            if (here.isEmpty()) {
                continue;
            }
            List<Integer> others = others(net, page, all);
            if (here.size() < net.meetings().size()) {
                boolean above = here.stream().anyMatch(m -> Net.leavesUpwards(m, net.height()));
                Figure figure = marks.mark(net, others, above);
                Node mark = new Node(MATCH + " " + net.name(), figure, net.height());
                nodes.add(mark);
                here.add(new Net.Meeting(mark, MATCH));
            }
            nets.add(new Net(net.name(), net.height(), here));
        }
        return new Scheme(nodes, nets);
    }

    private static List<Integer> others(Net net, Set<Node> page, List<Set<Node>> all) {
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Set<Node> other = all.get(i);
            if (other != page && net.meetings().stream().anyMatch(m -> other.contains(m.node()))) {
                others.add(i);
            }
        }
        return others;
    }
}
