package linewalk.samples.symbol;

/** What a stroke means; the drafting style gives it a width and a dash. */
public enum Pen {
    OUTLINE,
    THIN,
    WORKING,
    PILOT,
    DRAIN,
    /** A pilot line inside a symbol: too short for long dashes. */
    INNER_PILOT,
    CHAIN,
    FRAME
}
