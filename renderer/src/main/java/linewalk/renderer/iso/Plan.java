package linewalk.renderer.iso;

import java.util.List;

/**
 * A body and where its ports meet it.
 *
 * @param switches the part can stand otherwise, so room is kept for the mark of a change
 */
record Plan(Body body, List<Dock> docks, boolean switches) {

    Plan(Body body, List<Dock> docks) {
        this(body, docks, false);
    }

    Plan {
        docks = List.copyOf(docks);
    }
}
