package linewalk.linker;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.linker.step.StepState;

/** Which position each valve is in: as the step's state tells, else at rest. */
final class MachineState {

    private static final Set<Kind> SWITCHING = Passes.SWITCHING;

    private final StepState step;
    private final Set<String> energised;

    /** Null for the machine as drawn, at rest. */
    MachineState(StepState step) {
        this.step = step;
        this.energised = step == null
                ? Set.of()
                : step.step().energised().stream().map(Names::plain).collect(Collectors.toSet());
    }

    StepState step() {
        return step;
    }

    /** As the step's state tells; where that is not known, as its solenoids alone would have it. Null where they clash. */
    Position of(Component c) {
        Position known = step == null ? null : step.position(c);
        return known != null ? known : bySolenoids(c);
    }

    /** Whether a valve moves as its solenoids say is not known: what feeds its pilot was not read. */
    boolean assumed(Component c) {
        return step != null && SWITCHING.contains(c.kind()) && !c.positions().isEmpty() && step.position(c) == null;
    }

    private Position bySolenoids(Component c) {
        Position best = c.rest().orElse(null);
        long most = 0;
        for (Position p : c.positions()) {
            long on = p.isRest()
                    ? 0
                    : p.by().stream()
                            .filter(s -> energised.contains(Names.plain(s)))
                            .count();
            if (on > 0 && on >= most) {
                best = on == most ? null : p;
                most = on;
            }
        }
        return best;
    }

    /** Whether the state tells what a pilot opens; a machine at rest has none. */
    boolean tellsPilots() {
        return step != null;
    }

    /** As the chart says, else null. */
    Boolean open(Component shutOff) {
        return step == null ? null : step.open().get(Names.plain(shutOff.tag()));
    }

    /** A pump that delivers either way does so as its position tells. */
    PumpSides.Sides sides(Component pump, PumpSides pumps) {
        Position now = pump.positions().isEmpty() ? null : of(pump);
        if (now == null) {
            return pumps.of(pump);
        }
        List<Port> out = new ArrayList<>();
        List<Port> in = new ArrayList<>();
        for (Passage x : now.passages()) {
            pump.findPort(x.to()).ifPresent(out::add);
            pump.findPort(x.from()).ifPresent(in::add);
        }
        return new PumpSides.Sides(out, in, false);
    }

    String words(Component c) {
        Position now = of(c);
        String state = now == null || now.isRest() ? "in the position at rest" : moved(now);
        return step == null ? state : state + " (step " + step.step().title() + ")";
    }

    private String moved(Position p) {
        List<String> on =
                p.by().stream().filter(s -> energised.contains(Names.plain(s))).toList();
        if (!on.isEmpty()) {
            return "with " + String.join(" and ", on) + " energised";
        }
        String by = String.join(" or ", p.by());
        return p.how() == Position.How.PILOT ? "with its pilot line fed (" + by + ")" : "in position " + by;
    }
}
