package linewalk.linker;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import linewalk.drawing.Origin;
import linewalk.drawing.ZoneGrid;
import linewalk.drawing.ZoneGrid.Band;

/**
 * On a page whose letters are pictures the first or last label of a border may be lost, and its field with it. Other
 * sheets of that size have the border whole: the field is given back, as wide as its neighbour.
 */
final class GridFellows {

    /** So many sheets must agree on a border. */
    private static final int AGREE = 2;

    private static final double SAME_SIZE_PT = 20;

    private final List<PageDraft> pages;

    private GridFellows(List<PageDraft> pages) {
        this.pages = pages;
    }

    static void mend(List<PageDraft> pages) {
        GridFellows fellows = new GridFellows(pages);
        Map<PageDraft, ZoneGrid> mended = new HashMap<>();
        for (PageDraft p : pages) {
            if (p.grid() != null && isRead(p)) {
                mended.put(p, fellows.mended(p));
            }
        }
        mended.forEach(PageDraft::grid);
    }

    private static boolean isRead(PageDraft p) {
        return p.reading.references().stream().anyMatch(r -> r.origin() == Origin.OCR);
    }

    private ZoneGrid mended(PageDraft p) {
        ZoneGrid g = p.grid();
        return new ZoneGrid(whole(p, ZoneGrid::columns), whole(p, ZoneGrid::rows), g.printed(), g.toGrid());
    }

    private List<Band> whole(PageDraft page, Function<ZoneGrid, List<Band>> axis) {
        List<Band> own = axis.apply(page.grid());
        Map<List<String>, Integer> borders = new LinkedHashMap<>();
        pages.stream()
                .filter(p -> p != page && p.grid() != null && sameSize(p, page))
                .forEach(p -> borders.merge(labels(axis.apply(p.grid())), 1, Integer::sum));
        return borders.entrySet().stream()
                .filter(e -> e.getValue() >= AGREE && e.getKey().size() > own.size())
                .filter(e -> Collections.indexOfSubList(e.getKey(), labels(own)) >= 0)
                .max(Map.Entry.comparingByValue())
                .map(e -> extended(own, e.getKey()))
                .orElse(own);
    }

    /** Either way round: a scan may lie on its side. */
    private static boolean sameSize(PageDraft a, PageDraft b) {
        double wide = Math.max(a.reading.widthPt(), a.reading.heightPt())
                - Math.max(b.reading.widthPt(), b.reading.heightPt());
        double high = Math.min(a.reading.widthPt(), a.reading.heightPt())
                - Math.min(b.reading.widthPt(), b.reading.heightPt());
        return Math.abs(wide) < SAME_SIZE_PT && Math.abs(high) < SAME_SIZE_PT;
    }

    private static List<String> labels(List<Band> bands) {
        return bands.stream().map(Band::label).toList();
    }

    private static List<Band> extended(List<Band> own, List<String> all) {
        int at = Collections.indexOfSubList(all, labels(own));
        List<Band> bands = new ArrayList<>(own);
        for (int i = at - 1; i >= 0; i--) {
            Band next = bands.get(0);
            bands.add(0, new Band(all.get(i), 2 * next.fromPt() - next.toPt(), next.fromPt()));
        }
        for (String label : all.subList(at + own.size(), all.size())) {
            Band last = bands.get(bands.size() - 1);
            bands.add(new Band(label, last.toPt(), 2 * last.toPt() - last.fromPt()));
        }
        return bands;
    }
}
