package linewalk.renderer;

import java.awt.geom.Rectangle2D;

/**
 * Where the picture goes: beside the column of words on the first pages, over the whole width where no words are left.
 *
 * @param pagesBeside pages that have a column of words
 */
record PrintAreas(Rectangle2D beside, Rectangle2D whole, int pagesBeside) {

    /** @param page counts from 0 */
    Rectangle2D on(int page) {
        return page < pagesBeside ? beside : whole;
    }
}
