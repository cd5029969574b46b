package linewalk.renderer;

import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** Letters where a line is cut and goes on elsewhere on the print: the same letter stands at both ends. */
final class MatchMarks {

    static final double RADIUS_PT = 9;
    /** From a port to the middle of its mark. */
    static final double STUB_PT = 19;
    /** What a letter takes with a page beside it, to the right of its middle. */
    static final double PAGE_PT = 56;

    /** Half of what a letter takes with a page below it. */
    static final double HALF_PT = 22;

    private final Map<String, String> letters = new LinkedHashMap<>();

    /** The letter of a cut; a new one for a cut not met before. */
    String letter(String cut) {
        return letters.computeIfAbsent(cut, k -> name(letters.size()));
    }

    boolean isEmpty() {
        return letters.isEmpty();
    }

    /** None that ports are called by (ISO 9461), and no I and O, which read as numbers. */
    static String name(int n) {
        String alphabet = "CDEFHJKNQUWZ";
        String last = alphabet.substring(n % alphabet.length(), n % alphabet.length() + 1);
        return n < alphabet.length() ? last : name(n / alphabet.length() - 1) + last;
    }

    /** The room that a mark takes with its words. */
    static Rectangle2D box(Point2D at, boolean pageBelow) {
        double r = RADIUS_PT + 1;
        return pageBelow
                ? new Rectangle2D.Double(at.getX() - HALF_PT, at.getY() - r, 2 * HALF_PT, 2 * r + 15)
                : new Rectangle2D.Double(at.getX() - r, at.getY() - r, 2 * r + 44, 2 * r);
    }

    /**
     * A filled disc with the letter in white.
     *
     * @param where the other end is, in words; may be empty
     * @param below the words stand below the disc rather than on its right
     */
    static void paint(Canvas c, String letter, double xPt, double yPt, String where, boolean below) {
        double r = radiusPt(letter);
        on(c, Canvas.disc(xPt, yPt, r), letter, xPt, yPt);
        if (below) {
            c.textAround(where, xPt, yPt + r + 7, Lettering.TEXT_PT);
        } else {
            c.text(where, xPt + r + 3, yPt + 3.6, Lettering.TEXT_PT);
        }
    }

    /** The same in a square: its line stands under stored pressure or a load. */
    static void warn(Canvas c, String letter, double xPt, double yPt) {
        double r = radiusPt(letter);
        on(c, new Rectangle2D.Double(xPt - r, yPt - r, 2 * r, 2 * r), letter, xPt, yPt);
    }

    private static void on(Canvas c, Shape mark, String letter, double xPt, double yPt) {
        c.fill(Ink.BLACK, mark);
        c.pen(java.awt.Color.WHITE, Ink.line(1));
        c.textAround(letter, xPt, yPt, Lettering.TEXT_PT);
        c.pen(Ink.BLACK, Ink.line(1));
    }

    static double radiusPt(String letter) {
        return Math.max(RADIUS_PT, Lettering.widthPt(letter, Lettering.TEXT_PT) / 2 + 3);
    }

    /**
     * "here, page 3, 4".
     *
     * @param here how many times it goes on on the same page
     * @param pages others where it goes on, counted from 0
     */
    static String where(int here, List<Integer> pages) {
        String others = pages.stream().map(p -> String.valueOf(p + 1)).collect(Collectors.joining(", "));
        String times = here == 0 ? "" : here == 1 ? "here" : here == 2 ? "here twice" : "here " + here + " times";
        return times + (here > 0 && !pages.isEmpty() ? ", " : "") + (pages.isEmpty() ? "" : "page " + others);
    }

    /** The same of a line with one other end. */
    static String where(int page, int other) {
        return page == other ? where(1, List.of()) : where(0, List.of(other));
    }
}
