package linewalk.renderer.iso;

import java.util.List;
import java.util.function.Predicate;
import linewalk.drawing.Passage;

/**
 * The upright axis of a part that oil runs through, with the two ports on it.
 *
 * @param lower null where no port is shown below
 * @param upper null where no port is shown above
 */
record Axis(PortUse lower, PortUse upper) {

    /** Of one or two ports; the first of two that lead the same way is drawn below. */
    static Axis of(List<PortUse> working) {
        if (working.isEmpty()) {
            return new Axis(null, null);
        }
        PortUse first = working.get(0);
        if (working.size() == 1) {
            return first.up() ? new Axis(null, first) : new Axis(first, null);
        }
        PortUse second = working.get(1);
        return first.up() && !second.up() ? new Axis(second, first) : new Axis(first, second);
    }

    /** The way of the passages asked for; untold where there is none or they disagree. */
    Way way(List<Passage> passages, Predicate<Passage> wanted) {
        List<Way> ways = passages.stream()
                .filter(wanted)
                .map(this::way)
                .filter(Way::told)
                .distinct()
                .toList();
        return ways.size() == 1 ? ways.get(0) : Way.UNTOLD;
    }

    private Way way(Passage x) {
        if (lower != null && upper != null && !(isEnd(x.from()) && isEnd(x.to()))) {
            return Way.UNTOLD;
        }
        if (is(lower, x.from()) || is(upper, x.to())) {
            return Way.UP;
        }
        return is(upper, x.from()) || is(lower, x.to()) ? Way.DOWN : Way.UNTOLD;
    }

    /** From the pressure port to another, as their letters tell. */
    Way byLetters() {
        boolean fromBelow = named(lower, "P\\d?") && named(upper, "[TRAB]\\d?");
        boolean fromAbove = named(upper, "P\\d?") && named(lower, "[TRAB]\\d?");
        return fromBelow ? Way.UP : fromAbove ? Way.DOWN : Way.UNTOLD;
    }

    private boolean isEnd(String id) {
        return is(lower, id) || is(upper, id);
    }

    private static boolean is(PortUse port, String id) {
        return port != null && port.id().equals(id);
    }

    private static boolean named(PortUse port, String pattern) {
        return port != null && port.name() != null && port.name().strip().matches("(?i)" + pattern);
    }
}
