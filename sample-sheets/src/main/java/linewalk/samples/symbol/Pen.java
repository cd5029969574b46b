package linewalk.samples.symbol;

/** What a stroke means; the drafting style gives it a width and a dash. */
public enum Pen {
    OUTLINE,
    THIN,
    WORKING,
    PILOT,
    DRAIN,
    CHAIN,
    FRAME
}
