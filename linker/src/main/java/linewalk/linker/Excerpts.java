package linewalk.linker;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.UserError;

/** Cuts out of a set what belongs to a path, an actuator or a pump; or takes all of it. */
public final class Excerpts {

    private final Circuit circuit;
    private final PumpSides pumps;

    public Excerpts(DrawingSet set) {
        circuit = new Circuit(set);
        pumps = new PumpSides(circuit);
    }

    /** The parts and lines of a trace. */
    public static Excerpt path(Trace trace) {
        Set<Component> parts = new LinkedHashSet<>();
        Set<Line> lines = new LinkedHashSet<>();
        for (Leg leg : trace.legs()) {
            if (leg instanceof Leg.Through t) {
                parts.add(t.component());
            } else if (leg instanceof Leg.Along a) {
                lines.add(a.line());
            }
        }
        return new Excerpt("Flow path", parts, lines);
    }

    /** Every part that a line meets, and every line. */
    public Excerpt whole() {
        Set<Component> parts = new LinkedHashSet<>();
        for (Component c : circuit.set.components()) {
            if (c.ports().stream().anyMatch(p -> !circuit.atPort(p).isEmpty())) {
                parts.add(c);
            }
        }
        return new Excerpt("Whole circuit", parts, new LinkedHashSet<>(circuit.lines));
    }

    /**
     * Everything between an actuator and the mains, with the mains on to pump and tank.
     *
     * @throws UserError where the set has no such part, or it is no actuator
     */
    public Excerpt actuator(String tag) {
        List<Component> drawn = named(tag, c -> c.kind().isActuator() || c.kind() == Kind.BRAKE, "no actuator");
        BitSet mains = new BitSet();
        circuit.set.components().stream()
                .filter(c -> c.kind() == Kind.PUMP)
                .forEach(p -> mains.or(Mains.supply(circuit, pumps, p).lines()));
        mains.or(Mains.tank(circuit).lines());
        return new Grower(mains, c -> !c.kind().isActuator() || drawn.contains(c)).grow("Circuit of " + tag, drawn);
    }

    /**
     * Everything that a pump's oil may come to before it is back in the tank.
     *
     * @throws UserError where the set has no such part, or it is no pump
     */
    public Excerpt pump(String tag) {
        List<Component> drawn = named(tag, c -> c.kind() == Kind.PUMP, "no pump");
        BitSet mains = new BitSet();
        circuit.set.components().stream()
                .filter(c -> c.kind() == Kind.PUMP && !drawn.contains(c))
                .forEach(p -> mains.or(Mains.supply(circuit, pumps, p).lines()));
        drawn.forEach(p -> mains.andNot(Mains.supply(circuit, pumps, p).lines()));
        mains.or(Mains.tank(circuit).lines());
        return new Grower(mains, c -> c.kind() != Kind.PUMP || drawn.contains(c)).grow("Circuit of pump " + tag, drawn);
    }

    private List<Component> named(String tag, Predicate<Component> wanted, String not) {
        List<Component> drawn = new Designations(circuit).find(tag).drawings();
        if (drawn.stream().noneMatch(wanted)) {
            throw new UserError(
                    tag + " is " + not + " but a " + drawn.get(0).kind().word().replace('-', ' '));
        }
        return drawn;
    }

    /** Spreads from parts along their lines; along a main only through what a main goes on through. */
    private final class Grower {
        private final BitSet mains;
        private final Predicate<Component> entered;
        private final Set<Component> parts = new LinkedHashSet<>();
        private final BitSet lines = new BitSet();
        private final Deque<Integer> open = new ArrayDeque<>();

        Grower(BitSet mains, Predicate<Component> entered) {
            this.mains = mains;
            this.entered = entered;
        }

        Excerpt grow(String title, List<Component> from) {
            from.forEach(this::take);
            while (!open.isEmpty()) {
                int line = open.removeFirst();
                for (Circuit.Spot s : circuit.ends(line)) {
                    circuit.reference(s.end()).ifPresent(r -> circuit.mates(r)
                            .forEach(m -> circuit.atReference(m).forEach(t -> reach(t.line()))));
                    circuit.port(s.end())
                            .map(Circuit.PortAt::component)
                            .filter(c -> belongs(c, line))
                            .ifPresent(this::take);
                }
            }
            Set<Line> taken = new LinkedHashSet<>();
            lines.stream().forEach(i -> taken.add(circuit.lines.get(i)));
            return new Excerpt(title, parts, taken);
        }

        private boolean belongs(Component c, int line) {
            if (c.kind() == Kind.TANK || !mains.get(line)) {
                return c.kind() == Kind.TANK || entered.test(c);
            }
            return Mains.isFollowed(c) || c.kind() == Kind.PUMP && entered.test(c);
        }

        private void take(Component c) {
            if (parts.add(c) && c.kind() != Kind.TANK) {
                c.ports().forEach(p -> circuit.atPort(p).forEach(s -> reach(s.line())));
            }
        }

        private void reach(int line) {
            if (!lines.get(line)) {
                lines.set(line);
                open.addLast(line);
            }
        }
    }
}
