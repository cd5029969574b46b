package linewalk.renderer;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import linewalk.renderer.iso.PortPlace;
import linewalk.renderer.iso.Side;
import linewalk.renderer.scheme.Figure;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Lettering;

/** A line goes on elsewhere on the print: the same letter stands there. */
final class MatchFigure implements Figure {

    /** Room for two letters: which ones they are is settled when all pages are. */
    private static final double DISC_PT = Lettering.widthPt("WW", Lettering.TEXT_PT) + 6;
    /** The word stands above the numbers: nearly all marks are of one size, whichever pages they name. */
    private static final double WORDS_PT = Lettering.widthPt("page", Lettering.TEXT_PT) + 1;

    /** The last row needs no leading below it. */
    private static final double BELOW_PT = Lettering.LEADING_PT - Lettering.TEXT_PT;

    private final Supplier<String> letter;
    private final TextStack words = new TextStack(WORDS_PT);
    private final boolean above;
    private final BooleanSupplier warns;

    /**
     * @param here how many times it goes on on the same page
     * @param pages others where it goes on, counted from 0
     * @param above the mark stands above its line
     * @param warns of what is stored in it; asked only of marks that stand on a page
     */
    MatchFigure(Supplier<String> letter, int here, List<Integer> pages, boolean above, BooleanSupplier warns) {
        this.warns = warns;
        this.letter = letter;
        words.plain(MatchMarks.where(here, pages));
        this.above = above;
    }

    boolean warns() {
        return warns.getAsBoolean();
    }

    @Override
    public double widthPt() {
        return DISC_PT + 3 + WORDS_PT + 2;
    }

    @Override
    public double heightPt() {
        return Math.max(DISC_PT, words.heightPt() - BELOW_PT);
    }

    @Override
    public PortPlace place(String port) {
        return new PortPlace(above ? Side.BOTTOM : Side.TOP, DISC_PT / 2);
    }

    /** The disc stands at the end of its line. */
    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        double r = DISC_PT / 2;
        double y = above ? yPt + heightPt() - r : yPt + r;
        if (warns()) {
            MatchMarks.warn(c, letter.get(), xPt + r, y);
        } else {
            MatchMarks.paint(c, letter.get(), xPt + r, y, "", false);
        }
        words.paint(c, xPt + DISC_PT + 3, yPt + (heightPt() - words.heightPt() + BELOW_PT) / 2);
    }
}
