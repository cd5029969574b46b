package linewalk.renderer;

import java.util.List;
import java.util.stream.Collectors;
import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.iso.Side;
import linewalk.renderer.scheme.Figure;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** A line goes on on another page of the print: the same letter stands there. */
final class MatchFigure implements Figure {

    private static final double DISC_PT = 2 * MatchMarks.RADIUS_PT + 2;

    private final String letter;
    private final String pages;
    private final boolean above;

    /**
     * @param pages counted from 0
     * @param above the mark stands above its line
     */
    MatchFigure(String letter, List<Integer> pages, boolean above) {
        this.letter = letter;
        this.pages = "page " + pages.stream().map(p -> String.valueOf(p + 1)).collect(Collectors.joining(", "));
        this.above = above;
    }

    private double discPt() {
        return Math.max(DISC_PT, Lettering.widthPt(letter, Lettering.TEXT_PT) + 8);
    }

    @Override
    public double widthPt() {
        return discPt() + 3 + Lettering.widthPt(pages, Lettering.TEXT_PT) + 2;
    }

    @Override
    public double heightPt() {
        return discPt();
    }

    @Override
    public PortPlace place(String port) {
        return new PortPlace(above ? Side.BOTTOM : Side.TOP, discPt() / 2);
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double r = discPt() / 2;
        MatchMarks.paint(c, letter, xPt + r, yPt + r, 0, false);
        c.pen(Ink.BLACK, Ink.line(1));
        c.text(pages, xPt + 2 * r + 3, yPt + r + 3.6, Lettering.TEXT_PT);
    }
}
