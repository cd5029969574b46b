package linewalk.linker;

/**
 * Resistance of a walk as one number: fields for each kind of hindrance, the worst in front, and the count of elements
 * last, so that adding costs and comparing them compares the worst hindrance first. Fields hold any walk that passes
 * fewer hindrances than their width; wider sums only make the walk look worse.
 */
final class Cost {

    static final long ELEMENT = 1;
    static final long CHECK = 1L << 16;
    static final long THROTTLE = 1L << 25;
    /** What pressure or a pilot opens, and what moves a load. */
    static final long OPENED = 1L << 34;
    /** What a pilot would open that is not fed in this step. */
    static final long OPENABLE = 1L << 39;

    static final long DRAIN = 1L << 43;
    static final long PILOT = 1L << 50;
    static final long RELIEF = 1L << 56;
    static final long OPEN = 0;

    private Cost() {}

    /** The hindrances alone, without the count of elements. */
    static long hindrance(long cost) {
        return cost >> 16;
    }

    static boolean overRelief(long cost) {
        return cost >= RELIEF;
    }

    /** Goes where no working oil flows. */
    static boolean offTheMain(long cost) {
        return cost >= DRAIN;
    }
}
