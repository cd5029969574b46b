package linewalk.samples.random;

import linewalk.samples.symbol.Spot;

/**
 * Where a line starts or ends. It leaves straight from {@code at} to {@code exit}, at least, on its way (dx, dy) out.
 * {@code owner} is the part or reference it belongs to, null at a join.
 */
record Tip(Spot at, Spot exit, int dx, int dy, String owner, String port) {
    boolean isJoin() {
        return owner == null;
    }

    /** Straight out from the exit. */
    Spot farther(double by) {
        return exit.plus(dx * by, dy * by);
    }
}
