package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Component;
import linewalk.linker.Leg;

/** The parts shown, in the order in which they are met: along a path a part stands again each time it is passed. */
final class Checklist {

    private Checklist() {}

    static List<Component> of(CardJob job) {
        if (!job.isPath()) {
            return List.copyOf(job.shown().parts());
        }
        List<Component> parts = new ArrayList<>();
        for (Leg leg : job.legs()) {
            if (leg instanceof Leg.Through t) {
                parts.add(t.component());
            }
        }
        return parts;
    }
}
