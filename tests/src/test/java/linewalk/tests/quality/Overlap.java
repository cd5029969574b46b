package linewalk.tests.quality;

import java.awt.geom.Rectangle2D;
import java.util.Locale;

/**
 * Two things of a print in one place.
 *
 * @param kind such as {@code text-line}
 * @param place in points of the page
 */
record Overlap(String kind, int page, Rectangle2D place, String what) {

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s, page %d at (%.0f, %.0f): %s",
                kind,
                page,
                place.getCenterX(),
                place.getCenterY(),
                what);
    }
}
