package linewalk.renderer;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import linewalk.renderer.sheet.Book;
import linewalk.renderer.sheet.Column;
import linewalk.renderer.sheet.Flow;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Medium;
import linewalk.renderer.sheet.Page;

/** Prints a trace: picture, parts, marks, doubts, cautions and the walk in words. */
public final class TracePrint {

    private static final double MARGIN_PT = 26;
    private static final double GUTTER_PT = 16;
    /** About the width of a column with its gutter: lines that the eye can follow back. */
    private static final double COLUMN_PT = 385;

    private final PrintJob job;
    private final DrawnScheme scheme;
    private final double innerWidthPt;
    private final double innerHeightPt;
    private final int columnsAcross;
    private final double columnPt;
    private final Rectangle2D beside;
    private final Rectangle2D whole;

    /** @param scheme null for cuttings */
    private TracePrint(PrintJob job, DrawnScheme scheme) {
        this.job = job;
        this.scheme = scheme;
        innerWidthPt = job.form().widthPt() - 2 * MARGIN_PT;
        innerHeightPt = job.form().heightPt() - 2 * MARGIN_PT - TitleStrip.HEIGHT_PT - 10;
        columnsAcross = Math.max(1, (int) Math.round(innerWidthPt / COLUMN_PT));
        columnPt = (innerWidthPt - (columnsAcross - 1) * GUTTER_PT) / columnsAcross;
        double pictureWidth = job.form().isWide() ? innerWidthPt - columnPt - GUTTER_PT : innerWidthPt;
        beside = new Rectangle2D.Double(MARGIN_PT, MARGIN_PT, pictureWidth, innerHeightPt);
        whole = new Rectangle2D.Double(MARGIN_PT, MARGIN_PT, innerWidthPt, innerHeightPt);
    }

    /** Writes a PDF. The same job gives the same bytes. */
    public static void write(PrintJob job, OutputStream out) throws IOException {
        try (Book book = book(job, Medium.PDF)) {
            book.write(0, out);
        }
    }

    /** All pages, ready to be written; the caller closes the book. */
    public static Book book(PrintJob job, Medium medium) throws IOException {
        TracePrint print = settled(job);
        return PrintBook.filled(print.job, medium, (book, sources) -> print.print(book, sources, new MatchMarks()));
    }

    private static TracePrint of(PrintJob job) {
        return new TracePrint(job, job.form().look() == Look.DRAWN ? DrawnScheme.of(job) : null);
    }

    /** The paper turned so that the picture comes on one page, where one way does that. */
    static TracePrint settled(PrintJob job) {
        TracePrint print = of(job);
        if (job.form().turn() != Turn.FITTING) {
            return print;
        }
        TracePrint landscape = print.turned(Turn.LANDSCAPE);
        TracePrint portrait = print.turned(Turn.PORTRAIT);
        boolean turned = print.scheme != null && !landscape.isOnOnePage() && portrait.isOnOnePage();
        return turned ? portrait : landscape;
    }

    PrintForm form() {
        return job.form();
    }

    private TracePrint turned(Turn turn) {
        return new TracePrint(job.in(job.form().turned(turn)), scheme);
    }

    private boolean isOnOnePage() {
        return !scheme.onOnePage(whole).isEmpty();
    }

    /**
     * Adds the print's pages to a book.
     *
     * @param letters of the book: a line that a picture drawn anew divides has one letter in all its prints
     */
    static void print(PrintJob job, Book book, SourcePages sources, MatchMarks letters) throws IOException {
        of(job).print(book, sources, letters);
    }

    /** The walk in plain words: a sentence for each part and each line with the crossing it leads to. */
    public static List<String> walk(PrintJob job) {
        return Walk.sentences(job);
    }

    private void print(Book book, SourcePages sources, MatchMarks letters) throws IOException {
        Doubts doubts = Doubts.of(job);
        PrintAreas areas = new PrintAreas(beside, whole, Integer.MAX_VALUE);
        Picture picture = picture(doubts, areas, sources, letters);
        List<Column> columns = columns(doubts, picture);
        if (!picture.leavesRoomForWords()) {
            areas = new PrintAreas(beside, whole, 0);
        } else if (picture.pages() > columns.size()) {
            // pages that have no words beside the picture give it their whole width
            areas = new PrintAreas(beside, whole, columns.size());
            picture = picture(doubts, areas, sources, letters);
            columns = columns(doubts, picture);
        }
        int first = book.pages();
        paintAll(book, picture, areas, columns, doubts.all().size());
        if (job.form().withCard()) {
            CardPages.add(job, doubts.all().size(), first, book);
        }
    }

    private Picture picture(Doubts doubts, PrintAreas areas, SourcePages sources, MatchMarks letters) {
        return job.form().look() == Look.DRAWN
                ? DrawnPicture.layOut(job, doubts, scheme, areas, letters)
                : CuttingsPicture.layOut(job, doubts, areas, sources);
    }

    private List<Column> columns(Doubts doubts, Picture picture) {
        return Flow.pour(Sections.of(job, doubts, picture, columnPt), innerHeightPt);
    }

    private void paintAll(Book book, Picture picture, PrintAreas areas, List<Column> columns, int doubts)
            throws IOException {
        int most = Math.min(areas.pagesBeside(), columns.size());
        int withWords = job.form().isWide() ? Math.min(picture.pages(), most) : 0;
        int after = (columns.size() - withWords + columnsAcross - 1) / columnsAcross;
        int pages = picture.pages() + after;
        PartLinks links = new PartLinks(book.pages());
        List<List<Placed>> words = place(columns, picture.pages(), withWords, pages);
        for (int p = 0; p < pages; p++) {
            int page = p;
            words.get(p).forEach(c -> links.row(page, c.column().places(c.xPt(), MARGIN_PT, columnPt)));
            if (p < picture.pages()) {
                links.symbol(p, picture.places(p, areas.on(p)));
            }
        }
        for (int p = 0; p < pages; p++) {
            Page page = book.newPage();
            if (p < picture.pages()) {
                page.bookmark(pictureTitle(p, picture.pages()), 0);
                picture.paint(p, page, areas.on(p));
            }
            words.get(p).forEach(c -> paint(page, c));
            double stripY = MARGIN_PT + innerHeightPt + 10;
            int cautions = IntStream.range(0, pages)
                    .filter(i -> words.get(i).stream().anyMatch(w -> w.column().heads(Sections.CAUTIONS)))
                    .findFirst()
                    .orElse(p);
            TitleStrip strip = new TitleStrip(job, doubts, cautions == p ? "" : "cautions on page " + (cautions + 1));
            strip.paint(page.canvas(), MARGIN_PT, stripY, innerWidthPt, p + 1, pages);
            links.on(page);
            page.finish();
        }
    }

    private record Placed(Column column, double xPt) {}

    /** The columns of each page: the last place beside a picture, all places after the pictures. */
    private List<List<Placed>> place(List<Column> columns, int pictures, int withWords, int pages) {
        List<List<Placed>> placed = new ArrayList<>();
        int next = 0;
        for (int p = 0; p < pages; p++) {
            List<Placed> here = new ArrayList<>();
            int first = p < pictures ? columnsAcross - 1 : 0;
            boolean hasWords = p < withWords || p >= pictures;
            for (int i = first; hasWords && i < columnsAcross && next < columns.size(); i++) {
                here.add(new Placed(columns.get(next++), MARGIN_PT + i * (columnPt + GUTTER_PT)));
            }
            placed.add(here);
        }
        return placed;
    }

    private static String pictureTitle(int page, int pages) {
        return pages == 1 ? "Picture" : "Picture, page " + (page + 1) + " of " + pages;
    }

    private static void paint(Page page, Placed placed) {
        page.canvas().pen(Ink.BLACK, Ink.line(1));
        placed.column().bookmark(page, MARGIN_PT);
        placed.column().paint(page.canvas(), placed.xPt(), MARGIN_PT);
    }
}
