package linewalk.importer.stroke;

import linewalk.drawing.Point;

/**
 * Whether a sign that stands alone may be a letter: it has the height and the pen of lettering in rows, or is as heavy for
 * its height, or stands in the border or in the middle of a circle, as that of a motor does.
 */
final class SingleTest {

    private static final double SAME_HEIGHT = 0.03;
    private static final double SAME_PEN = 0.1;
    private static final double BORDER = 0.06;

    /** How far from a circle's middle its letter stands, and the letter's height, in diameters. */
    private static final double MIDDLE = 0.1;

    private static final double LEAST_IN_RING = 0.15;

    private static final double MOST_IN_RING = 0.6;

    /** In a circle it says that a motor drives it (ISO 1219-1). */
    private static final String MOTOR = "M";

    /** Signs that no usual symbol looks like. */
    private static final String DISTINCT = "ABEFGJKPQRS2345689";

    /** And those that balls and eyes look like, whatever their size. */
    private static final String ROUND = "O0oQ";

    private final PageInk page;

    SingleTest(PageInk page) {
        this.page = page;
    }

    boolean lettering(Row r) {
        return usual(r) || inBorder(r);
    }

    boolean letter(Row r, String text) {
        return text.length() == 1
                && Character.isLetterOrDigit(text.charAt(0))
                && !arrow(r)
                && (lettering(r)
                        || DISTINCT.contains(text)
                        || !ROUND.contains(text) && heavy(r)
                        || text.equals(MOTOR) && inRing(r));
    }

    /** Part of it is drawn and part is painted. */
    private static boolean arrow(Row s) {
        return s.signs().get(0).pieces().stream().map(Piece::painted).distinct().count() > 1;
    }

    private boolean usual(Row s) {
        return page.rows().stream()
                .anyMatch(r -> Math.abs(r.heightPt() - s.heightPt()) < SAME_HEIGHT * r.heightPt()
                        && Math.abs(r.penPt() - s.penPt()) <= SAME_PEN * s.penPt());
    }

    /** As heavy for its height as other lettering; a painted letter shows its weight in its outline. */
    private boolean heavy(Row s) {
        if (s.penPt() == 0) {
            return page.rows().stream().anyMatch(r -> r.penPt() == 0);
        }
        double share = s.penPt() / s.heightPt();
        return page.rows().stream().anyMatch(r -> Math.abs(r.penPt() / r.heightPt() - share) < SAME_HEIGHT * share);
    }

    private boolean inRing(Row s) {
        Point m = s.center();
        return page.rings().stream()
                .anyMatch(b -> b.center().distancePt(m) < MIDDLE * b.widthPt()
                        && s.heightPt() > LEAST_IN_RING * b.heightPt()
                        && s.heightPt() < MOST_IN_RING * b.heightPt());
    }

    private boolean inBorder(Row s) {
        double x = s.center().xPt();
        double y = s.center().yPt();
        return Math.min(x, page.widthPt() - x) < BORDER * page.widthPt()
                || Math.min(y, page.heightPt() - y) < BORDER * page.heightPt();
    }
}
