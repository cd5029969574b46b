package linewalk.linker;

import java.util.Collections;
import java.util.Set;
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
    private final int depth;

    private Walk(Walk before, Move move, Spot at, int passed, long cost) {
        this.before = before;
        this.move = move;
        this.at = at;
        this.passed = passed;
        this.cost = cost;
        this.depth = before == null ? 0 : before.depth + 1;
    }

    static Walk start(Spot at, long cost) {
        return new Walk(null, null, at, 0, cost);
    }

    Walk go(Move m, int passedNow) {
        return new Walk(this, m, m.enter(), passedNow, cost + m.cost());
    }

    private String name() {
        return move == null ? "" : move.name();
    }

    /** The parts and references on the way, in order. */
    String names() {
        StringBuilder names = new StringBuilder();
        for (Walk w = this; w.before != null; w = w.before) {
            names.append(w.name()).append(' ');
        }
        return names.toString();
    }

    /** By designation where two part, a shorter walk before one that goes on from it. */
    static int byNames(Walk a, Walk b) {
        Walk x = a;
        Walk y = b;
        while (x.depth > y.depth) {
            x = x.before;
        }
        while (y.depth > x.depth) {
            y = y.before;
        }
        if (x == y) {
            return Integer.compare(a.depth, b.depth);
        }
        while (x.before != y.before) {
            x = x.before;
            y = y.before;
        }
        int byName = x.name().compareTo(y.name());
        return byName != 0 ? byName : Integer.compare(x.at.line(), y.at.line());
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
        return a != b || x == null || y == null || x.equals(y) || areTwoChecks(earlier.pass(), later.pass());
    }

    /** Two pilot checks in one block open each on its own; they have no port in common. */
    private static boolean areTwoChecks(Pass one, Pass other) {
        return !Passes.SWITCHING.contains(one.component().kind())
                && Collections.disjoint(Set.of(one.in(), one.out()), Set.of(other.in(), other.out()));
    }
}
