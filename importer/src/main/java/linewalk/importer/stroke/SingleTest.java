package linewalk.importer.stroke;

/**
 * Whether a sign that stands alone may be a letter: it has the height and the pen of lettering in rows, or is as heavy for
 * its height, or stands in the border.
 */
final class SingleTest {

    private static final double SAME_HEIGHT = 0.03;
    private static final double SAME_PEN = 0.1;
    private static final double BORDER = 0.06;

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
                && (lettering(r) || DISTINCT.contains(text) || !ROUND.contains(text) && heavy(r));
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

    private boolean inBorder(Row s) {
        double x = s.center().xPt();
        double y = s.center().yPt();
        return Math.min(x, page.widthPt() - x) < BORDER * page.widthPt()
                || Math.min(y, page.heightPt() - y) < BORDER * page.heightPt();
    }
}
