package linewalk.linker;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import linewalk.drawing.Finding;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Rule;

/** Where hand tags are pinned: finds their page and the nearest thing; what fits nothing becomes a finding. */
final class TagBoard {

    /** A tag holds on to a thing no farther than this part of the page's larger side. */
    private static final double REACH = 0.02;
    /** Of the reach. */
    private static final double CLOSE = 0.35;

    final List<PageDraft> pages;
    private final List<Finding> findings;

    TagBoard(List<PageDraft> pages, List<Finding> findings) {
        this.pages = pages;
        this.findings = findings;
    }

    /** The tag's page; a source left out is the set's only one. */
    Optional<PageDraft> page(String source, int page) {
        if (source == null
                && pages.stream().map(p -> p.page.source()).distinct().count() > 1) {
            return Optional.empty();
        }
        return pages.stream()
                .filter(p -> p.page.page() == page
                        && (source == null || p.page.source().equals(source)))
                .findFirst();
    }

    /** As far as a tag that saw no text may lie from what it is for: others may stand within its reach. */
    static double closePt(PageDraft page) {
        return reachPt(page) * CLOSE;
    }

    static double reachPt(PageDraft page) {
        return page.largerSidePt() * REACH;
    }

    /** The nearest thing in reach; one whose text is what the tag saw goes before nearer ones. */
    static <T> Optional<T> nearest(
            PageDraft page,
            List<T> things,
            Point place,
            String saw,
            Function<T, Double> distancePt,
            Function<T, String> text) {
        T best = null;
        double least = reachPt(page);
        boolean bestSeen = false;
        for (T t : things) {
            double d = distancePt.apply(t);
            boolean seen = saw != null && Names.plain(saw).equals(Names.plain(text.apply(t)));
            boolean better = seen == bestSeen ? d <= least : seen && d <= reachPt(page);
            if (better) {
                best = t;
                least = d;
                bestSeen = seen;
            }
        }
        return Optional.ofNullable(best);
    }

    void unplaced(PageDraft page, Point place, String what, String why) {
        findings.add(new Finding(
                Rule.TAG_UNPLACED,
                page == null ? null : page.page,
                place,
                List.of(),
                List.of(),
                "The hand tag for " + what + " fits nothing: " + why + ".",
                "change or remove the tag"));
    }

    void noPage(String source, int page, String what) {
        String where = source == null ? "page " + page : new PageKey(source, page).toString();
        boolean several = source == null && pages.stream().anyMatch(p -> p.page.page() == page);
        unplaced(
                null,
                null,
                what,
                several ? where + " is in several sources and the tag names none" : where + " is not in the set");
    }
}
