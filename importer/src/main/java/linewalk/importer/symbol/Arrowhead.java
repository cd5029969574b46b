package linewalk.importer.symbol;

import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Direction;

/**
 * A small arrow: a filled triangle or an open head of two strokes.
 *
 * @param tip where it points
 * @param direction from its base to its tip
 */
public record Arrowhead(Point tip, Direction direction, Box box) {}
