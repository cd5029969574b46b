package linewalk.renderer;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.linker.step.PressureClass;

/** What to beware of at a part itself: a charge stored in it, or oil that holds its load. */
final class HeldEnergy {

    private static final Set<Kind> HOLDING = EnumSet.of(Kind.COUNTERBALANCE_VALVE, Kind.PILOT_CHECK_VALVE);

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
        if (!c.kind().isActuator() && c.kind() != Kind.BRAKE) {
            return Optional.empty();
        }
        if (isHeld(c)) {
            return Optional.of("HELD: BLOCK LOAD");
        }
        return hasHoldingValve(c) ? Optional.of("MAY HOLD A LOAD") : Optional.empty();
    }

    private boolean isHeld(Component c) {
        return c.ports().stream()
                .flatMap(p -> index.atPort(p.id()).stream())
                .anyMatch(l -> moment.classOf(l) == PressureClass.HELD);
    }

    /** On its own lines, over sheets, stands a valve that is there to hold a load. */
    private boolean hasHoldingValve(Component c) {
        List<Line> lines = new ArrayList<>();
        c.ports().forEach(p -> index.atPort(p.id()).forEach(l -> add(l, lines)));
        for (int i = 0; i < lines.size(); i++) {
            for (End e : lines.get(i).ends()) {
                if (e instanceof End.AtPort p
                        && index.part(p.component()) != null
                        && HOLDING.contains(index.part(p.component()).kind())) {
                    return true;
                }
                if (e instanceof End.AtReference r && index.reference(r.reference()) != null) {
                    index.crossing(index.reference(r.reference()))
                            .forEach(x -> index.atReference(x.id()).forEach(l -> add(l, lines)));
                }
            }
        }
        return false;
    }

    private static void add(Line line, List<Line> lines) {
        if (!lines.contains(line)) {
            lines.add(line);
        }
    }
}
