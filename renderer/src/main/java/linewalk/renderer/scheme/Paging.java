package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Divides a scheme into parts and sets them on pages, at full size. Nets that run from part to part get a match mark on
 * each.
 */
public final class Paging {

    /** Makes the mark of a net at which it goes on in another part. */
    @FunctionalInterface
    public interface MatchMark {
        /**
         * @param here it goes on on the same page
         * @param otherPages counted from 0
         * @param above the mark stands above the nodes that the net joins in this part
         */
        Figure mark(Net net, boolean here, List<Integer> otherPages, boolean above);
    }

    /**
     * Share of a page that fields with their margins can cover: lines take the rest. More than 0.4 did not fit in any of
     * 1,268 layouts of random circuits.
     */
    private static final double MOST_COVERED = 0.5;

    /** What covers more than so many columns does not come in two. */
    private static final double TWO_COLUMNS = 1.7;

    /** Of a column's area: what covers more in two layouts does not come in one. */
    private static final double JOINED = 1.0;
    /** Of a column's sides. */
    private static final double TOUCHING = 1.1;

    private static final int MOST_COLUMNS = 3;
    /** Each part is one more place where the eye must look for a letter: worth so many pages. */
    private static final double PART_PAGES = 0.25;
    /** Two parts on one page: nothing that is divided costs less. */
    private static final double LEAST_DIVIDED = 1 + 2 * PART_PAGES;

    private static final double BETWEEN_COLUMNS_PT = 16;
    private static final double MARGIN_PT = 20;
    private static final String MATCH = "match";

    private final Scheme scheme;
    private final double widthPt;
    private final double heightPt;
    private final double columnPt;
    private final MatchNodes marks;
    private final Pieces pieces;
    private final List<Set<Node>> parts = new ArrayList<>();
    private final List<List<Set<Node>>> pages = new ArrayList<>();

    private Paging(Scheme scheme, Pieces pieces, double widthPt, double heightPt, int columns, MatchNodes marks) {
        this.scheme = scheme;
        this.pieces = pieces;
        this.widthPt = widthPt;
        this.heightPt = heightPt;
        columnPt = (widthPt - (columns - 1) * BETWEEN_COLUMNS_PT) / columns;
        this.marks = marks;
    }

    /**
     * At least one page; in columns where that takes clearly fewer. A single node that is larger than the paper has a page
     * of its own.
     *
     * @param widthPt of the picture's field on the paper
     */
    public static List<Layout> of(Scheme scheme, Pieces pieces, double widthPt, double heightPt, MatchMark marks) {
        MatchNodes known = new MatchNodes(marks);
        List<Layout> best = List.of();
        double least = Double.MAX_VALUE;
        for (int columns = 1; columns <= MOST_COLUMNS && least > LEAST_DIVIDED; columns++) {
            Paging paging = new Paging(scheme, pieces, widthPt, heightPt, columns, known);
            List<Layout> pages = paging.pages();
            double cost = pages.size() + PART_PAGES * paging.parts.size();
            if (cost < least) {
                best = pages;
                least = cost;
            }
        }
        return best;
    }

    /** The page of a picture on one page only; empty where it does not fit. */
    public static List<Layout> single(Scheme scheme, Pieces pieces, double widthPt, double heightPt) {
        Paging paging = new Paging(scheme, pieces, widthPt, heightPt, 1, null);
        Set<Node> all = new HashSet<>(scheme.nodes());
        if (paging.covered(all) > 1) {
            return List.of();
        }
        Layout layout = pieces.layOut(scheme, widthPt);
        return paging.fits(layout, widthPt) ? List.of(layout) : List.of();
    }

    private List<Layout> pages() {
        divide(new HashSet<>(scheme.nodes()));
        join();
        gather();
        return laidOut();
    }

    /** Parts in the order of the scheme, each on the first page that has room beside those that stand there. */
    private void gather() {
        parts.sort(Comparator.comparingInt(this::first));
        pages.clear();
        for (Set<Node> part : parts) {
            List<Set<Node>> page =
                    pages.stream().filter(p -> fitsBeside(part, p)).findFirst().orElse(null);
            if (page == null) {
                pages.add(new ArrayList<>(List.of(part)));
            } else {
                page.add(part);
            }
        }
    }

    private boolean fitsBeside(Set<Node> part, List<Set<Node>> page) {
        List<Set<Node>> both = new ArrayList<>(page);
        both.add(part);
        List<Layout> all = both.stream().flatMap(p -> alone(p).stream()).toList();
        return fits(Pieces.onShelves(all, widthPt), widthPt);
    }

    /** Match marks grow with the number of pages that they name: a page that no longer fits is divided once more. */
    private List<Layout> laidOut() {
        List<Layout> layouts = new ArrayList<>();
        for (List<Set<Node>> page : pages) {
            Layout layout = pieces.layOut(on(page, pages), widthPt);
            Set<Node> last = page.get(page.size() - 1);
            if (!fits(layout, widthPt) && page.size() > 1) {
                page.remove(last);
                pages.add(pages.indexOf(page) + 1, new ArrayList<>(List.of(last)));
                return laidOut();
            }
            if (!fits(layout, widthPt) && last.size() > 1) {
                parts.remove(last);
                halves(last, 0.5).forEach(this::divide);
                gather();
                return laidOut();
            }
            layouts.add(layout);
        }
        return layouts;
    }

    private List<Set<Node>> halves(Set<Node> nodes, double share) {
        Bisection.Halves halves =
                Bisection.of(ordered(nodes), scheme.nets(), share).get(0);
        return List.of(halves.first(), halves.second());
    }

    private List<Node> ordered(Set<Node> nodes) {
        return scheme.nodes().stream().filter(nodes::contains).toList();
    }

    private int first(Set<Node> part) {
        return scheme.nodes().indexOf(ordered(part).get(0));
    }

    private void divide(Set<Node> nodes) {
        double covered = covered(nodes);
        if (nodes.size() <= 1 || covered <= 1 && fits(nodes)) {
            parts.add(nodes);
            return;
        }
        int most = Math.max(2, (int) Math.ceil(covered));
        List<Bisection.Halves> ways = Bisection.of(ordered(nodes), scheme.nets(), (most / 2) / (double) most);
        if (covered < TWO_COLUMNS) {
            for (Bisection.Halves way : ways) {
                if (fits(way.first()) && fits(way.second())) {
                    parts.add(way.first());
                    parts.add(way.second());
                    return;
                }
            }
        }
        divide(ways.get(0).first());
        divide(ways.get(0).second());
    }

    /** Two parts that share nets become one where both fit in a column: those that share most first. */
    private void join() {
        record Pair(Set<Node> one, Set<Node> two, long nets) {}
        boolean joined = true;
        Set<Set<Node>> failed = new HashSet<>();
        while (joined) {
            joined = false;
            List<Pair> pairs = new ArrayList<>();
            for (int i = 0; i < parts.size(); i++) {
                for (int k = i + 1; k < parts.size(); k++) {
                    pairs.add(new Pair(parts.get(i), parts.get(k), shared(parts.get(i), parts.get(k))));
                }
            }
            pairs.sort(Comparator.comparingLong(Pair::nets).reversed());
            for (Pair p : pairs) {
                Set<Node> both = new HashSet<>(p.one);
                both.addAll(p.two);
                if (covered(both) <= 1 && mayFit(p.one, p.two) && !failed.contains(both) && fits(both)) {
                    parts.set(parts.indexOf(p.one), both);
                    parts.remove(p.two);
                    joined = true;
                    break;
                }
                failed.add(both);
            }
        }
    }

    /** Two layouts hardly become smaller by being one. */
    private boolean mayFit(Set<Node> one, Set<Node> two) {
        Layout a = column(one);
        Layout b = column(two);
        return areaPt(one) + areaPt(two) <= JOINED * columnPt * heightPt
                && (a.widthPt() + b.widthPt() <= TOUCHING * columnPt
                        || a.heightPt() + b.heightPt() <= TOUCHING * heightPt);
    }

    private double areaPt(Set<Node> nodes) {
        return alone(nodes).stream()
                .mapToDouble(l -> l.widthPt() * l.heightPt())
                .sum();
    }

    private long shared(Set<Node> one, Set<Node> two) {
        return scheme.nets().stream()
                .filter(n -> n.meetings().stream().anyMatch(m -> one.contains(m.node()))
                        && n.meetings().stream().anyMatch(m -> two.contains(m.node())))
                .count();
    }

    private double covered(Set<Node> nodes) {
        return nodes.stream().mapToDouble(Paging::area).sum() / (columnPt * heightPt * MOST_COVERED);
    }

    private static double area(Node n) {
        return (n.figure().widthPt() + MARGIN_PT) * (n.figure().heightPt() + MARGIN_PT);
    }

    private boolean fits(Set<Node> nodes) {
        return fits(column(nodes), columnPt);
    }

    private Layout column(Set<Node> nodes) {
        return Pieces.onShelves(alone(nodes), columnPt);
    }

    /** A part with its match marks, as if all others stood on one other page. */
    private List<Layout> alone(Set<Node> nodes) {
        return pieces.alone(nodes, () -> {
            List<Set<Node>> part = List.of(nodes);
            return on(part, List.of(part, elsewhere(part)));
        });
    }

    private boolean fits(Layout l, double acrossPt) {
        return l.widthPt() <= acrossPt && l.heightPt() <= heightPt;
    }

    /** A page of all other nodes. */
    private List<Set<Node>> elsewhere(List<Set<Node>> page) {
        Set<Node> others = new HashSet<>(scheme.nodes());
        page.forEach(others::removeAll);
        return List.of(others);
    }

    /** The scheme of one page: its parts with their nets, and match marks where nets go on in other parts. */
    private Scheme on(List<Set<Node>> page, List<List<Set<Node>>> all) {
        List<Node> nodes = new ArrayList<>();
        List<Net> nets = new ArrayList<>();
        for (Set<Node> part : page) {
            nodes.addAll(ordered(part));
            for (Net net : scheme.nets()) {
                List<Net.Meeting> here = new ArrayList<>(net.meetings().stream()
                        .filter(m -> part.contains(m.node()))
                        .toList());
                if (here.isEmpty()) {
                    continue;
                }
                if (here.size() < net.meetings().size()) {
                    Node mark = mark(net, here, part, page, all);
                    nodes.add(mark);
                    here.add(new Net.Meeting(mark, MATCH));
                }
                nets.add(new Net(net.name(), net.height(), here));
            }
        }
        return new Scheme(nodes, nets);
    }

    private Node mark(
            Net net, List<Net.Meeting> here, Set<Node> part, List<Set<Node>> page, List<List<Set<Node>>> all) {
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) != page && all.get(i).stream().anyMatch(p -> meets(net, p))) {
                others.add(i);
            }
        }
        boolean onThisPage = page.stream().anyMatch(p -> p != part && meets(net, p));
        boolean above = here.stream().anyMatch(m -> Net.leavesUpwards(m, net.height()));
        return marks.of(net, onThisPage, others, above, page.indexOf(part));
    }

    private static boolean meets(Net net, Set<Node> part) {
        return net.meetings().stream().anyMatch(m -> part.contains(m.node()));
    }
}
