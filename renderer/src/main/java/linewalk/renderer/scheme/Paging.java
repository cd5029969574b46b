package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Divides a scheme into parts and sets them on pages, at full size. Nets that run from part to part get a match mark on
 * each.
 */
public final class Paging {

    /** Makes the mark of a net at which it goes on in another part. */
    @FunctionalInterface
    public interface MatchMark {
        /**
         * @param here how many times it goes on on the same page
         * @param otherPages counted from 0
         * @param above the mark stands above the nodes that the net joins in this part
         */
        Figure mark(Net net, int here, List<Integer> otherPages, boolean above);
    }

    private static final String MATCH = "match";

    private final Numbered scheme;
    private final Size page;
    private final Pieces pieces;
    private final MatchNodes marks;
    private final Expected expected;

    private Paging(Scheme all, Pieces pieces, Size page, MatchMark mark) {
        scheme = new Numbered(all);
        this.pieces = pieces;
        this.page = page;
        marks = new MatchNodes(mark);
        expected = new Expected(scheme, this::markSize);
    }

    /**
     * At least one page; in columns where that takes clearly fewer. A single node that is larger than the
     * paper has a page of its own.
     *
     * @param widthPt of the picture's field on the paper
     */
    public static List<Layout> of(Scheme scheme, Pieces pieces, double widthPt, double heightPt, MatchMark mark) {
        return new Paging(scheme, pieces, new Size(widthPt, heightPt), mark).pages();
    }

    /** The page of a picture on one page only; empty where it does not fit. */
    public static List<Layout> single(Scheme scheme, Pieces pieces, double widthPt, double heightPt) {
        return new Paging(scheme, pieces, new Size(widthPt, heightPt), null).single();
    }

    private List<Layout> single() {
        BitSet all = scheme.all();
        if (Division.columns(scheme, all, page) > 1 || !fitting(page).may(all)) {
            return List.of();
        }
        Layout layout = pieces.layOut(scheme.scheme(), page.widthPt());
        return layout.size().isWithin(page) ? List.of(layout) : List.of();
    }

    private List<Layout> pages() {
        List<Layout> single = single();
        return single.isEmpty() ? laidOut(new Planning(scheme, page, expected, this::sizes).parts()) : single;
    }

    private Fitting fitting(Size column) {
        return new Fitting(column, expected, this::sizes);
    }

    /** Match marks grow with the number of pages that they name: a page that no longer fits is divided once more. */
    private List<Layout> laidOut(List<BitSet> parts) {
        List<List<BitSet>> pages = Gathering.of(parts, this::sizes, page);
        List<Layout> layouts = layouts(pages);
        for (int i = 0; i < pages.size(); i++) {
            List<BitSet> on = pages.get(i);
            BitSet last = on.get(on.size() - 1);
            boolean fits = layouts.get(i).size().isWithin(page);
            if (!fits && on.size() > 1) {
                on.remove(last);
                pages.add(i + 1, new ArrayList<>(List.of(last)));
                layouts = layouts(pages);
                i = -1;
            } else if (!fits && last.cardinality() > 1) {
                List<BitSet> more = new ArrayList<>(parts);
                more.remove(last);
                more.addAll(Division.of(scheme, page, fitting(page), last));
                return laidOut(more);
            }
        }
        return layouts;
    }

    private List<Layout> layouts(List<List<BitSet>> pages) {
        return pages.parallelStream()
                .map(p -> pieces.layOut(on(p, pages), page.widthPt()))
                .toList();
    }

    /** Of the pieces of a part with its match marks, as if all others stood on one other page. */
    private List<Size> sizes(BitSet part) {
        return pieces.alone(part, () -> {
            BitSet others = scheme.all();
            others.andNot(part);
            List<BitSet> page = List.of(part);
            return on(page, List.of(page, List.of(others)));
        });
    }

    /** Of a mark that names one page. */
    private Size markSize(Net net) {
        return marks.of(net, 0, List.of(1), true, 0).size();
    }

    /** The scheme of one page: its parts with their nets, and match marks where nets go on in other parts. */
    private Scheme on(List<BitSet> parts, List<List<BitSet>> pages) {
        List<Node> nodes = new ArrayList<>();
        List<Net> nets = new ArrayList<>();
        for (BitSet part : parts) {
            nodes.addAll(scheme.nodes(part));
            scheme.netsOf(part).stream().forEach(n -> {
                Net net = scheme.net(n);
                List<Net.Meeting> here = new ArrayList<>(net.meetings().stream()
                        .filter(m -> scheme.contains(part, m.node()))
                        .toList());
                if (here.size() < net.meetings().size()) {
                    Node mark = mark(n, here, part, parts, pages);
                    nodes.add(mark);
                    here.add(new Net.Meeting(mark, MATCH));
                }
                nets.add(new Net(net.name(), net.height(), here));
            });
        }
        return new Scheme(nodes, nets);
    }

    private Node mark(int number, List<Net.Meeting> here, BitSet part, List<BitSet> parts, List<List<BitSet>> pages) {
        Net net = scheme.net(number);
        BitSet joined = scheme.nodesOf(number);
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i) != parts && pages.get(i).stream().anyMatch(joined::intersects)) {
                others.add(i);
            }
        }
        int onThisPage = (int)
                parts.stream().filter(p -> p != part && joined.intersects(p)).count();
        boolean above = here.stream().anyMatch(m -> Net.leavesUpwards(m, net.height()));
        return marks.of(net, onThisPage, others, above, parts.indexOf(part));
    }
}
