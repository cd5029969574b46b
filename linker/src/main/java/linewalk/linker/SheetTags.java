package linewalk.linker;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.HandTag;
import linewalk.drawing.Origin;
import linewalk.drawing.ZoneGrid;

/** Names and zone grids that people gave to sheets. */
final class SheetTags {

    private final TagBoard board;

    SheetTags(TagBoard board) {
        this.board = board;
    }

    void place(HandTag.OfSheet tag) {
        Optional<PageDraft> page = board.page(tag.source(), tag.page());
        if (page.isEmpty()) {
            board.noPage(tag.source(), tag.page(), "sheet " + tag.name());
            return;
        }
        PageDraft p = page.get();
        if (tag.name() != null && !tag.name().isBlank()) {
            p.name = tag.name().strip();
            p.origin = Origin.HAND;
        }
        p.title = tag.title() == null ? p.title : tag.title();
        p.revision = tag.revision() == null ? p.revision : tag.revision();
    }

    void place(HandTag.OfGrid tag) {
        Optional<PageDraft> page = board.page(tag.source(), tag.page());
        if (page.isEmpty()) {
            board.noPage(tag.source(), tag.page(), "a zone grid");
            return;
        }
        PageDraft p = page.get();
        List<String> columns = labels(tag.columns());
        List<String> rows = labels(tag.rows());
        if (columns.isEmpty() || rows.isEmpty()) {
            board.unplaced(p, null, "a zone grid", "it has no columns or no rows");
            return;
        }
        Box box = box(tag, p);
        p.grid(new ZoneGrid(
                StandardGrid.split(columns, box.x0Pt(), box.x1Pt()),
                StandardGrid.split(rows, box.y0Pt(), box.y1Pt()),
                true));
    }

    private static Box box(HandTag.OfGrid tag, PageDraft p) {
        Box frame = p.grid() == null
                ? new Box(0, 0, p.reading.widthPt(), p.reading.heightPt())
                : p.grid().extent();
        return new Box(
                tag.x0Pt() == null ? frame.x0Pt() : tag.x0Pt(),
                tag.y0Pt() == null ? frame.y0Pt() : tag.y0Pt(),
                tag.x1Pt() == null ? frame.x1Pt() : tag.x1Pt(),
                tag.y1Pt() == null ? frame.y1Pt() : tag.y1Pt());
    }

    private static List<String> labels(String text) {
        List<String> labels = new ArrayList<>(
                Arrays.asList(text == null ? new String[0] : text.strip().split("\\s+")));
        labels.removeIf(String::isEmpty);
        return labels;
    }
}
