package linewalk.tests.quality;

import java.awt.geom.Rectangle2D;

/**
 * A run of lettering on one baseline.
 *
 * @param ink from its first to its last glyph's ink
 * @param capitalPt height of its capitals, whether it has any or not
 */
record Text(int order, String words, Rectangle2D ink, double capitalPt, Thing owner, boolean inCutting) {}
