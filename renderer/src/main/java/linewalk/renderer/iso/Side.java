package linewalk.renderer.iso;

/** The side of a symbol's field at which a line meets a port. */
public enum Side {
    TOP,
    RIGHT,
    BOTTOM,
    LEFT
}
