package linewalk.renderer;

import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.linker.Excerpt;
import linewalk.linker.Neighbourhood;
import linewalk.linker.step.PressureClass;

/** What to beware of at a part or in a line: a charge stored there, or oil that holds a load. */
final class HeldEnergy {

    private static final String STORED = "STORED PRESSURE";
    private static final String HELD = "HELD: BLOCK LOAD";
    private static final String MAY_HOLD = "MAY HOLD A LOAD";

    private static final Set<Kind> HOLDING = EnumSet.of(Kind.COUNTERBALANCE_VALVE, Kind.PILOT_CHECK_VALVE);
    /** What stands on one side of it stands on the other. */
    private static final Set<Kind> OPEN = EnumSet.of(
            Kind.FILTER,
            Kind.STRAINER,
            Kind.COOLER,
            Kind.HEATER,
            Kind.HOSE,
            Kind.SWIVEL,
            Kind.TEST_POINT,
            Kind.ORIFICE);

    private final Moment moment;
    private final Neighbourhood network;
    /** By lines' ids; pages are laid out side by side. */
    private final Map<String, Optional<String>> cautions = new ConcurrentHashMap<>();

    HeldEnergy(PrintJob job) {
        moment = job.moment();
        network = new Neighbourhood(job.set());
    }

    /** A brake may hold whatever its spring or its oil does: common practice, no source. */
    Optional<String> caution(Component c) {
        if (c.kind() == Kind.ACCUMULATOR) {
            return Optional.of(STORED);
        }
        if (!isLoaded(c)) {
            return Optional.empty();
        }
        Set<Line> lines = network.linesAt(c);
        if (lines.stream().anyMatch(this::isHeld)) {
            return Optional.of(HELD);
        }
        return c.kind() == Kind.BRAKE || hasHoldingValve(beside(lines)) ? Optional.of(MAY_HOLD) : Optional.empty();
    }

    /** Of a line itself, wherever on it one stands: by what is joined to it over sheets and open parts. */
    Optional<String> caution(Line line) {
        return cautions.computeIfAbsent(line.id(), k -> found(line));
    }

    private Optional<String> found(Line line) {
        if (isHeld(line)) {
            return Optional.of(HELD);
        }
        Set<Component> near = beside(List.of(line));
        if (near.stream().anyMatch(HeldEnergy::isLoaded) && hasHoldingValve(near)) {
            return Optional.of(MAY_HOLD);
        }
        // what an orifice lets off slowly, or not at all if it is blocked, is still stored
        boolean drained = reached(List.of(line), c -> OPEN.contains(c.kind()) && c.kind() != Kind.ORIFICE).stream()
                .anyMatch(c -> c.kind() == Kind.TANK);
        boolean stored = reached(List.of(line), c -> OPEN.contains(c.kind()) || isOpenShutOff(c)).stream()
                .anyMatch(c -> c.kind() == Kind.ACCUMULATOR);
        return stored && !drained ? Optional.of(STORED) : Optional.empty();
    }

    /** Accumulators from which oil could come to what is shown, however its valves stand, but for shut-offs told closed. */
    List<Component> accumulators(Excerpt shown) {
        Set<Line> lines = new LinkedHashSet<>(shown.lines());
        shown.parts().stream().filter(c -> c.kind() != Kind.TANK).forEach(c -> lines.addAll(network.linesAt(c)));
        return reached(lines, c -> c.kind() != Kind.TANK && (c.kind() != Kind.SHUT_OFF_VALVE || isOpenShutOff(c)))
                .stream()
                .filter(c -> c.kind() == Kind.ACCUMULATOR)
                .toList();
    }

    private static boolean isLoaded(Component c) {
        return c.kind().isActuator() || c.kind() == Kind.BRAKE;
    }

    private boolean isHeld(Line line) {
        return moment.classOf(line) == PressureClass.HELD;
    }

    private static boolean hasHoldingValve(Collection<Component> parts) {
        return parts.stream().anyMatch(c -> HOLDING.contains(c.kind()));
    }

    private boolean isOpenShutOff(Component c) {
        return c.kind() == Kind.SHUT_OFF_VALVE
                && !(moment.state() == null
                        ? c.normallyClosed()
                        : moment.state().isShut(c));
    }

    private Set<Component> beside(Collection<Line> lines) {
        return reached(lines, c -> false);
    }

    private Set<Component> reached(Collection<Line> lines, Predicate<Component> passed) {
        return network.from(lines, passed).parts();
    }
}
