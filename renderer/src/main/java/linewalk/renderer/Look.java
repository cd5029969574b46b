package linewalk.renderer;

/** How a print shows the path. */
public enum Look {
    /** Drawn anew with plain symbols. */
    DRAWN,
    /** The original's own areas along the path. */
    CUTTINGS
}
