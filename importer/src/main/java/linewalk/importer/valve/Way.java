package linewalk.importer.valve;

import java.util.List;
import java.util.Set;

/**
 * What hangs together inside a square.
 *
 * @param places where it leaves the square; one place alone is blocked
 * @param heads the places that arrows point to
 * @param throttled a throttle's marks stand beside it
 * @param seat where oil comes in through the seat of a check, or null
 */
record Way(List<Place> places, Set<Place> heads, boolean throttled, Place seat) {

    Way {
        places = List.copyOf(places);
        heads = Set.copyOf(heads);
    }

    boolean blocked() {
        return places.size() == 1;
    }
}
