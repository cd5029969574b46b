package linewalk.renderer.card;

import java.util.List;
import java.util.stream.Collectors;
import linewalk.drawing.Sheet;
import linewalk.renderer.card.Fields.Field;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** What stands at the top of each page of a card: all of it on the first, enough to tell whose a loose page is on the others. */
final class PageHead {

    static final double TITLE_PT = 21;
    private static final double TITLE_ROW_PT = 32;
    private static final double GAP_PT = 6;

    private final CardJob job;
    private final double widthPt;
    private final List<Fields> first;
    private final Fields following;

    PageHead(CardJob job, double widthPt) {
        this.job = job;
        this.widthPt = widthPt;
        CardJob.Head h = job.head();
        first = List.of(
                new Fields(
                        widthPt,
                        new Field(0.28, "Card number", ""),
                        new Field(0.52, "Drawing set", h.set()),
                        new Field(0.20, "Printed on", h.printed().toString())),
                new Fields(widthPt, new Field(0.5, what(), h.subject()), new Field(0.5, "State", h.condition())),
                new Fields(widthPt, new Field(1, "Source sheets and revisions", sheets(h.sheets()))),
                new Fields(widthPt, new Field(1, "Before use", use(h.doubts()))));
        following = new Fields(
                widthPt,
                new Field(0.20, "Card number", ""),
                new Field(0.24, "Drawing set", h.set()),
                new Field(0.36, what(), h.subject()),
                new Field(0.20, "Printed on", h.printed().toString()));
    }

    private String what() {
        return job.isPath() ? "Flow path" : "Circuit";
    }

    private static String sheets(List<Sheet> sheets) {
        return sheets.stream()
                .map(s -> "sheet " + s.name()
                        + (s.revision() == null ? ", no revision read" : ", revision " + s.revision()))
                .collect(Collectors.joining("; "));
    }

    private static String use(int doubts) {
        String told = doubts == 0
                ? "No doubt is told on the print before this card; that does not prove the drawing right."
                : "The print before this card tells " + (doubts == 1 ? "1 doubt" : doubts + " doubts")
                        + ": settle them first.";
        return told + " Check on the machine, and that no revision is newer than those above.";
    }

    double heightPt(int page) {
        return TITLE_ROW_PT
                + GAP_PT
                + (page == 0 ? first.stream().mapToDouble(Fields::heightPt).sum() : following.heightPt());
    }

    /** @param page from 0 */
    void paint(Canvas c, double xPt, double yPt, int page, int pages) {
        c.pen(Ink.BLACK, Ink.line(1));
        c.text("Job card", xPt, yPt + TITLE_PT, TITLE_PT);
        String number = "page " + (page + 1) + " of " + pages + " of the card";
        double x = xPt + widthPt - Lettering.widthPt(number, Lettering.HEAD_PT);
        c.text(number, x, yPt + TITLE_PT, Lettering.HEAD_PT);
        double y = yPt + TITLE_ROW_PT;
        for (Fields f : page == 0 ? first : List.of(following)) {
            f.paint(c, xPt, y);
            y += f.heightPt();
        }
    }
}
