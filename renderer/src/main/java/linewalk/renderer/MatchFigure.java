package linewalk.renderer;

import java.util.List;
import java.util.function.Supplier;
import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.iso.Side;
import linewalk.renderer.scheme.Figure;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** A line goes on elsewhere on the print: the same letter stands there. */
final class MatchFigure implements Figure {

    /** Room for two letters: which ones they are is settled when all pages are. */
    private static final double DISC_PT = Lettering.widthPt("WW", Lettering.TEXT_PT) + 6;

    private final Supplier<String> letter;
    private final String pages;
    private final boolean above;

    /**
     * @param here how many times it goes on on the same page
     * @param pages others where it goes on, counted from 0
     * @param above the mark stands above its line
     */
    MatchFigure(Supplier<String> letter, int here, List<Integer> pages, boolean above) {
        this.letter = letter;
        this.pages = MatchMarks.where(here, pages);
        this.above = above;
    }

    @Override
    public double widthPt() {
        return DISC_PT + 3 + Lettering.widthPt(pages, Lettering.TEXT_PT) + 2;
    }

    @Override
    public double heightPt() {
        return DISC_PT;
    }

    @Override
    public PortPlace place(String port) {
        return new PortPlace(above ? Side.BOTTOM : Side.TOP, DISC_PT / 2);
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double r = DISC_PT / 2;
        MatchMarks.paint(c, letter.get(), xPt + r, yPt + r, "", false);
        c.pen(Ink.BLACK, Ink.line(1));
        c.text(pages, xPt + 2 * r + 3, yPt + r + 3.6, Lettering.TEXT_PT);
    }
}
