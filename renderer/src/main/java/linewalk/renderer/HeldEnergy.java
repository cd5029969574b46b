package linewalk.renderer;

import java.util.Optional;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.linker.step.PressureClass;

/** What to beware of at a part itself: a charge stored in it, or oil that holds its load. */
final class HeldEnergy {

    private final Moment moment;
    private final SetIndex index;

    HeldEnergy(Moment moment, SetIndex index) {
        this.moment = moment;
        this.index = index;
    }

    Optional<String> caution(Component c) {
        if (c.kind() == Kind.ACCUMULATOR) {
            return Optional.of("STORED PRESSURE");
        }
        boolean moves = c.kind().isActuator() || c.kind() == Kind.BRAKE;
        return moves && isHeld(c) ? Optional.of("HELD OIL: BLOCK LOAD") : Optional.empty();
    }

    private boolean isHeld(Component c) {
        return c.ports().stream()
                .flatMap(p -> index.atPort(p.id()).stream())
                .anyMatch(l -> moment.classOf(l) == PressureClass.HELD);
    }
}
