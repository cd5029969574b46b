package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.Comparator;
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

    /** Share of a page that fields with their margins can cover: lines take the rest. */
    private static final double MOST_COVERED = 0.8;

    /** What covers more than so many pages does not come on two. */
    private static final double TWO_PAGES = 1.7;

    private static final double MARGIN_PT = 20;
    private static final double SIDE_BY_SIDE = 8;
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
        paging.divide(new HashSet<>(scheme.nodes()));
        paging.join();
        paging.pages.sort(Comparator.comparingInt(paging::first));
        return paging.pages.stream()
                .map(p -> paging.layout(paging.part(p, paging.pages)))
                .toList();
    }

    /** The page of a picture on one page only; empty where it does not fit. */
    public static List<Layout> single(Scheme scheme, double widthPt, double heightPt) {
        Paging paging = new Paging(scheme, widthPt, heightPt, null);
        Set<Node> all = new HashSet<>(scheme.nodes());
        if (paging.covered(all) > 1) {
            return List.of();
        }
        Layout layout = paging.layout(scheme);
        return paging.fits(layout) ? List.of(layout) : List.of();
    }

    private int first(Set<Node> page) {
        for (int i = 0; i < scheme.nodes().size(); i++) {
            if (page.contains(scheme.nodes().get(i))) {
                return i;
            }
        }
        return Integer.MAX_VALUE;
    }

    private void divide(Set<Node> nodes) {
        double covered = covered(nodes);
        if (nodes.size() <= 1 || covered <= 1 && fits(nodes)) {
            pages.add(nodes);
            return;
        }
        int most = Math.max(2, (int) Math.ceil(covered));
        List<Node> ordered = scheme.nodes().stream().filter(nodes::contains).toList();
        List<Bisection.Halves> ways = Bisection.of(ordered, scheme.nets(), (most / 2) / (double) most);
        if (covered < TWO_PAGES) {
            for (Bisection.Halves way : ways) {
                if (fits(way.first()) && fits(way.second())) {
                    pages.add(way.first());
                    pages.add(way.second());
                    return;
                }
            }
        }
        divide(ways.get(0).first());
        divide(ways.get(0).second());
    }

    /** Two pages that share nets become one where both fit on it: those that share most first. */
    private void join() {
        record Pair(Set<Node> one, Set<Node> two, long nets) {}
        boolean joined = true;
        Set<Set<Node>> failed = new HashSet<>();
        while (joined) {
            joined = false;
            List<Pair> pairs = new ArrayList<>();
            for (int i = 0; i < pages.size(); i++) {
                for (int k = i + 1; k < pages.size(); k++) {
                    pairs.add(new Pair(pages.get(i), pages.get(k), shared(pages.get(i), pages.get(k))));
                }
            }
            pairs.sort(Comparator.comparingLong(Pair::nets).reversed());
            for (Pair p : pairs) {
                Set<Node> both = new HashSet<>(p.one);
                both.addAll(p.two);
                if (covered(both) <= 1 && !failed.contains(both) && fits(both)) {
                    pages.set(pages.indexOf(p.one), both);
                    pages.remove(p.two);
                    joined = true;
                    break;
                }
                failed.add(both);
            }
        }
    }

    private long shared(Set<Node> one, Set<Node> two) {
        return scheme.nets().stream()
                .filter(n -> n.meetings().stream().anyMatch(m -> one.contains(m.node()))
                        && n.meetings().stream().anyMatch(m -> two.contains(m.node())))
                .count();
    }

    private double covered(Set<Node> nodes) {
        return nodes.stream().mapToDouble(Paging::area).sum() / (widthPt * heightPt * MOST_COVERED);
    }

    private static double area(Node n) {
        return (n.figure().widthPt() + MARGIN_PT) * (n.figure().heightPt() + MARGIN_PT);
    }

    /** With its match marks, whatever pages the others stand on. */
    private boolean fits(Set<Node> nodes) {
        Set<Node> others = new HashSet<>(scheme.nodes());
        others.removeAll(nodes);
        return fits(layout(part(nodes, List.of(others))));
    }

    /** Pieces side by side where that fits, else packed to the shape of the paper. */
    private Layout layout(Scheme some) {
        Layout row = Layering.of(some, SIDE_BY_SIDE);
        return fits(row) ? row : Layering.of(some, widthPt / heightPt);
    }

    private boolean fits(Layout l) {
        return l.widthPt() <= widthPt && l.heightPt() <= heightPt;
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
            if (here.size() < net.meetings().size()) {
                boolean above = here.stream().anyMatch(m -> Net.leavesUpwards(m, net.height()));
                Figure figure = marks.mark(net, others(net, page, all), above);
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
