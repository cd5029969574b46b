package linewalk.renderer.iso;

import java.util.Set;
import linewalk.drawing.Position;

/**
 * How a part stands in the step shown.
 *
 * @param active the position it is in, or null where it is not known or the part has none
 * @param energised names of the solenoids that are energised
 * @param changed it stands differently from the step before
 */
public record Standing(Position active, Set<String> energised, boolean changed) {

    public Standing {
        energised = Set.copyOf(energised);
    }
}
