package linewalk.renderer;

/** How the paper lies. */
public enum Turn {
    /** Portrait where only so the picture comes on one page, else landscape. */
    FITTING,
    LANDSCAPE,
    PORTRAIT
}
