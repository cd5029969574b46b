package linewalk.renderer.card;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;
import linewalk.renderer.sheet.Book;
import linewalk.renderer.sheet.Column;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Page;
import linewalk.renderer.sheet.TextBlock;

/** The pages that a planner hands out and a technician fills in: tables with boxes to tick and fields to write in. */
public final class JobCard {

    private static final double MARGIN_PT = 26;
    private static final double GUTTER_PT = 18;
    /** About the width of A4 within its margins: a table that is narrower has no room to write in. */
    private static final double COLUMN_PT = 530;

    private final double pageWidthPt;
    private final double pageHeightPt;
    private final PageHead head;
    private final int across;
    private final double columnPt;
    private final List<Column> columns;

    private JobCard(CardJob job, double pageWidthPt, double pageHeightPt) {
        this.pageWidthPt = pageWidthPt;
        this.pageHeightPt = pageHeightPt;
        double inner = pageWidthPt - 2 * MARGIN_PT;
        across = Math.max(1, (int) ((inner + GUTTER_PT) / (COLUMN_PT + GUTTER_PT)));
        columnPt = (inner - (across - 1) * GUTTER_PT) / across;
        head = new PageHead(job, inner);
        TextBlock text = new TextBlock(columnPt);
        columns = Pouring.pour(Blocks.of(job, text), n -> pageHeightPt - 2 * MARGIN_PT - head.heightPt(n / across));
    }

    /**
     * Adds the card's pages, of the size of the print's.
     *
     * @param print the number of the print's first page, to which the card's head leads
     */
    public static void addTo(Book book, CardJob job, int print, double pageWidthPt, double pageHeightPt)
            throws IOException {
        new JobCard(job, pageWidthPt, pageHeightPt).paint(book, print);
    }

    private void paint(Book book, int print) throws IOException {
        int pages = (columns.size() + across - 1) / across;
        for (int p = 0; p < pages; p++) {
            Page page = book.newPage();
            if (p == 0) {
                page.bookmark("Job card", 0);
            }
            head.paint(page.canvas(), MARGIN_PT, MARGIN_PT, p, pages);
            page.link(
                    new Rectangle2D.Double(MARGIN_PT, MARGIN_PT, pageWidthPt - 2 * MARGIN_PT, head.heightPt(p)),
                    print,
                    new Rectangle2D.Double(0, 0, pageWidthPt, pageHeightPt));
            for (int i = p * across; i < Math.min(columns.size(), (p + 1) * across); i++) {
                paint(page, columns.get(i), i % across, MARGIN_PT + head.heightPt(p));
            }
            page.finish();
        }
    }

    private void paint(Page page, Column column, int place, double yPt) {
        page.canvas().pen(Ink.BLACK, Ink.line(1));
        column.bookmark(page, yPt);
        column.paint(page.canvas(), MARGIN_PT + place * (columnPt + GUTTER_PT), yPt);
    }
}
