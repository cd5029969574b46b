package linewalk.renderer.overlay;

import java.io.IOException;
import java.util.List;
import linewalk.drawing.Sheet;
import linewalk.renderer.sheet.Column;
import linewalk.renderer.sheet.Flow;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;
import linewalk.renderer.sheet.Row;

/** Running text on pages as wide as a sheet and no taller than needed, in columns, lettered in the sheet's proportion. */
final class TextPages {

    private static final double MARGIN = 30;
    private static final double GUTTER = 22;
    private static final double COLUMN_AT_LEAST = 330;
    private static final double HEAD = 24;
    private static final double STEP = 20;

    private final OverlayBook book;
    private final Sheet like;
    private final double unitPt;
    private final int columns;

    TextPages(OverlayBook book, Sheet like) {
        this.book = book;
        this.like = like;
        unitPt = Scale.of(like).factor();
        columns = Math.max(1, (int) ((inner(like.widthPt()) + GUTTER) / (COLUMN_AT_LEAST + GUTTER)));
    }

    private double inner(double extentPt) {
        return extentPt / unitPt - 2 * MARGIN;
    }

    double columnWidth() {
        return (inner(like.widthPt()) - (columns - 1) * GUTTER) / columns;
    }

    void write(String title, List<Row> rows) throws IOException {
        double most = inner(like.heightPt()) - HEAD;
        double all = rows.stream().mapToDouble(Row::heightPt).sum();
        double height = Math.min(most, Math.max(STEP, all / columns));
        List<Column> poured = Flow.pour(rows, height);
        while (poured.size() > columns && height < most) {
            height = Math.min(most, height + STEP);
            poured = Flow.pour(rows, height);
        }
        for (int from = 0; from < poured.size(); from += columns) {
            page(title, height, poured.subList(from, Math.min(poured.size(), from + columns)));
        }
    }

    private void page(String title, double height, List<Column> side) throws IOException {
        OverlayBook.Page page = book.newPage(like.widthPt(), (height + HEAD + 2 * MARGIN) * unitPt, unitPt);
        page.canvas().pen(Ink.BLACK, Ink.line(1));
        page.canvas().text(title, MARGIN, MARGIN + Lettering.HEAD_PT - 4, Lettering.HEAD_PT * 1.2);
        for (int i = 0; i < side.size(); i++) {
            side.get(i).paint(page.canvas(), MARGIN + i * (columnWidth() + GUTTER), MARGIN + HEAD);
        }
        page.finish();
    }
}
