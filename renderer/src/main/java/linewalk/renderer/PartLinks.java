package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.Map;
import linewalk.renderer.sheet.Page;

/** Leads from each part's row in the table to its symbol, and back. */
final class PartLinks {

    private record Place(int page, Rectangle2D box) {}

    private final int firstPage;
    private final Map<String, Place> rows = new HashMap<>();
    private final Map<String, Place> symbols = new HashMap<>();

    /** @param firstPage number in the book of the print's first page */
    PartLinks(int firstPage) {
        this.firstPage = firstPage;
    }

    /** @param page of the print, from 0 */
    void row(int page, Map<String, Rectangle2D> places) {
        places.forEach((id, box) -> rows.put(id, new Place(firstPage + page, box)));
    }

    /** The first symbol of a part that is shown twice, such as a tank. */
    void symbol(int page, Map<String, Rectangle2D> places) {
        places.forEach((id, box) -> symbols.putIfAbsent(id, new Place(firstPage + page, box)));
    }

    void on(Page page) {
        rows.keySet().stream().filter(symbols::containsKey).sorted().forEach(id -> {
            link(page, rows.get(id), symbols.get(id));
            link(page, symbols.get(id), rows.get(id));
        });
    }

    private static void link(Page page, Place from, Place to) {
        if (from.page() == page.number()) {
            page.link(from.box(), to.page(), to.box());
        }
    }
}
