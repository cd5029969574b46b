package linewalk.renderer.symbol;

/** Where a port of a symbol lies. */
public enum Side {
    TOP,
    BOTTOM
}
