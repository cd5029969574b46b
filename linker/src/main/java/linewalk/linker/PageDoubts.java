package linewalk.linker;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Finding;
import linewalk.drawing.HandTag;
import linewalk.drawing.Point;
import linewalk.drawing.Rule;

/** What a page could not read surely, unless a hand tag has settled it or its candidate was dropped since. */
final class PageDoubts {

    private record Settled(PageDraft page, Point place) {}

    private final List<PageDraft> pages;
    private final Set<String> kept;
    private final List<Settled> settled = new ArrayList<>();

    /** Plain designations whose positions a hand tag tells. */
    private final Set<String> told = new HashSet<>();

    PageDoubts(List<PageDraft> pages, RefIndex index, List<HandTag> tags) {
        this.pages = pages;
        this.kept = index.refs.stream().map(Ref::id).collect(Collectors.toCollection(HashSet::new));
        TagBoard board = new TagBoard(pages, new ArrayList<>());
        for (HandTag tag : tags) {
            if (tag instanceof HandTag.OfReference t) {
                settle(board, t.source(), t.page(), t.xPt(), t.yPt());
            } else if (tag instanceof HandTag.OfComponent t) {
                settle(board, t.source(), t.page(), t.xPt(), t.yPt());
            } else if (tag instanceof HandTag.OfPort t) {
                settle(board, t.source(), t.page(), t.xPt(), t.yPt());
            } else if (tag instanceof HandTag.OfPosition t) {
                told.add(Names.plain(t.component()));
            }
        }
    }

    private void settle(TagBoard board, String source, int page, double xPt, double yPt) {
        board.page(source, page).ifPresent(p -> settled.add(new Settled(p, new Point(xPt, yPt))));
    }

    void check(List<Finding> findings) {
        for (PageDraft p : pages) {
            p.doubts.stream().filter(f -> !settled(p, f) && !dropped(f)).forEach(findings::add);
        }
    }

    private boolean settled(PageDraft page, Finding f) {
        boolean positions = f.rule() == Rule.DOUBTFUL_READING
                && f.components().stream().map(Names::plain).anyMatch(told::contains);
        return positions
                || f.place() != null
                        && settled.stream()
                                .anyMatch(
                                        s -> s.page == page && s.place.distancePt(f.place()) <= TagBoard.reachPt(page));
    }

    private boolean dropped(Finding f) {
        return f.rule() == Rule.DOUBTFUL_READING
                && !f.references().isEmpty()
                && f.references().stream().noneMatch(kept::contains);
    }
}
