package linewalk.renderer;

import java.util.List;
import linewalk.renderer.ink.ChangeMark;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** The title block along the lower edge of every page. */
final class TitleStrip {

    static final double HEIGHT_PT = 66;

    private static final String STATE = "State";

    private record Cell(double share, String label, String value) {}

    private final PrintJob job;
    private final int doubts;
    private final String cautions;

    /** @param cautions where they are, in words; empty on their own page */
    TitleStrip(PrintJob job, int doubts, String cautions) {
        this.job = job;
        this.doubts = doubts;
        this.cautions = cautions;
    }

    void paint(Canvas c, double xPt, double yPt, double widthPt, int page, int pages) {
        c.pen(Ink.BLACK, Ink.line(1.2));
        c.rect(xPt, yPt, widthPt, HEIGHT_PT);
        double x = xPt;
        for (Cell cell : cells(page, pages)) {
            double w = cell.share() * widthPt;
            if (x > xPt) {
                c.pen(Ink.BLACK, Ink.line(0.6));
                c.line(x, yPt, x, yPt + HEIGHT_PT);
            }
            paint(c, cell, x + 5, yPt, w - 10);
            if (cell.label().equals(STATE)
                    && job.moment().hasChanged(job.subject().excerpt())) {
                changed(c, x + w - 5, yPt);
            }
            x += w;
        }
    }

    /** What the mark means, on every page: the legend may be on another. */
    private static void changed(Canvas c, double rightPt, double yPt) {
        String word = "changed";
        double left = rightPt - Lettering.widthPt(word, Lettering.TEXT_PT);
        ChangeMark.paint(c, left - ChangeMark.SIZE_PT, yPt + 9.4);
        c.pen(Ink.BLACK, Ink.line(1));
        c.text(word, left, yPt + 13, Lettering.TEXT_PT);
    }

    private static void paint(Canvas c, Cell cell, double x, double y, double widthPt) {
        c.pen(Ink.BLACK, Ink.line(1));
        c.text(cell.label(), x, y + 13, Lettering.TEXT_PT);
        double size = Lettering.HEAD_PT;
        if (Lettering.wrap(cell.value(), size, widthPt).size() > 3) {
            size = Lettering.TEXT_PT;
        }
        List<String> lines = Lettering.wrap(cell.value(), size, widthPt);
        int most = 3;
        for (int i = 0; i < Math.min(most, lines.size()); i++) {
            String cut = i == most - 1 && lines.size() > most ? " ..." : "";
            c.text(shortened(lines.get(i), cut, size, widthPt), x, y + 27 + i * (size + 1.5), size);
        }
    }

    private static String shortened(String line, String tail, double size, double widthPt) {
        String text = line;
        while (!tail.isEmpty() && text.length() > 1 && Lettering.widthPt(text + tail, size) > widthPt) {
            text = text.substring(0, text.length() - 1);
        }
        return text + tail;
    }

    private String doubtful() {
        String arrival = !job.subject().isPath() || Words.arrives(job.trace()) ? "" : " - DOES NOT ARRIVE";
        return arrival + count();
    }

    private String count() {
        return doubts == 0 ? "" : doubts == 1 ? " - 1 DOUBT" : " - " + doubts + " DOUBTS";
    }

    private List<Cell> cells(int page, int pages) {
        String step = job.step() == null ? "" : "Step " + job.step().number() + ", ";
        return List.of(
                new Cell(0.25, "Drawing set", SheetTitles.set(job)),
                new Cell(
                        0.20,
                        job.subject().isPath() ? "Flow path" : "Circuit",
                        Words.capital(job.subject().title()) + doubtful()),
                new Cell(0.23, STATE, new Words(job).condition()),
                new Cell(0.16, "Source sheets", SheetRevisions.of(Sections.sheets(job))),
                new Cell(
                        0.16,
                        "Page, date",
                        step + "page " + page + " of " + pages + "; " + job.date()
                                + (cautions.isEmpty() ? "" : "; " + cautions)));
    }
}
