package linewalk.renderer.iso;

/**
 * Where a line meets a symbol.
 *
 * @param side of the symbol's field
 * @param offsetPt from the field's left edge (top and bottom) or from its top edge (left and right)
 */
public record PortPlace(Side side, double offsetPt) {}
