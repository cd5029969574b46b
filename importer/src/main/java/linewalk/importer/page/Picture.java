package linewalk.importer.page;

import linewalk.drawing.Box;

/**
 * An image that a page paints.
 *
 * @param box where, in points as displayed
 * @param pxPerPt its resolution
 */
public record Picture(Box box, double pxPerPt) {}
