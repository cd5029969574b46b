package linewalk.linker;

import linewalk.drawing.Component;
import linewalk.drawing.Position;
import linewalk.linker.Circuit.Spot;

/** A walk up to a line that it has just entered, as a chain back to its start. */
final class Walk {

    final Walk before;
    /** Null at the start. */
    final Move move;

    final Spot at;
    final int passed;
    final long cost;
    /** Designations on the way, for ties. */
    final String key;

    private Walk(Walk before, Move move, Spot at, int passed, long cost, String key) {
        this.before = before;
        this.move = move;
        this.at = at;
        this.passed = passed;
        this.cost = cost;
        this.key = key;
    }

    static Walk start(Spot at, long cost) {
        return new Walk(null, null, at, 0, cost, "");
    }

    Walk go(Move m, int passedNow) {
        String name = m.pass() == null ? m.from().id() : m.pass().component().tag();
        return new Walk(this, m, m.enter(), passedNow, cost + m.cost(), key + name + '\u0001');
    }

    /** No line twice (so no port twice), and no part in two positions at once. */
    boolean allows(Move m) {
        for (Walk w = this; w != null; w = w.before) {
            if (w.at.line() == m.enter().line() || !agrees(w.move, m)) {
                return false;
            }
        }
        return true;
    }

    private static boolean agrees(Move earlier, Move later) {
        if (earlier == null || earlier.pass() == null || later.pass() == null) {
            return true;
        }
        Component a = earlier.pass().component();
        Component b = later.pass().component();
        Position x = earlier.pass().position();
        Position y = later.pass().position();
        return a != b || x == null || y == null || x.equals(y);
    }
}
