package linewalk.linker;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Port;

/**
 * Lines that serve many users: those with nothing but passive parts and checks between them and a pump's pressure side,
 * or a tank. Whoever follows one user's circuit and comes to a main goes on along it to pump or tank, and not into the
 * other users.
 */
final class Mains {

    private static final Set<Kind> FOLLOWED = Set.of(
            Kind.CHECK_VALVE,
            Kind.SHUT_OFF_VALVE,
            Kind.STRAINER,
            Kind.FILTER,
            Kind.HOSE,
            Kind.SWIVEL,
            Kind.COOLER,
            Kind.HEATER);

    private final Circuit circuit;
    private final BitSet lines = new BitSet();

    private Mains(Circuit circuit) {
        this.circuit = circuit;
    }

    /** Those of one pump. */
    static Mains supply(Circuit circuit, PumpSides pumps, Component pump) {
        Mains mains = new Mains(circuit);
        mains.spread(pumps.of(pump).pressure());
        return mains;
    }

    static Mains tank(Circuit circuit) {
        Mains mains = new Mains(circuit);
        mains.spread(circuit.tanks().stream().flatMap(t -> t.ports().stream()).toList());
        return mains;
    }

    boolean has(int line) {
        return lines.get(line);
    }

    BitSet lines() {
        return lines;
    }

    /** A part that a main goes on through. */
    static boolean isFollowed(Component c) {
        return FOLLOWED.contains(c.kind()) && c.ports().size() == 2;
    }

    private void spread(List<Port> from) {
        Deque<Integer> open = new ArrayDeque<>();
        from.forEach(p -> circuit.atPort(p).forEach(s -> open.add(s.line())));
        while (!open.isEmpty()) {
            int line = open.pop();
            if (lines.get(line)) {
                continue;
            }
            lines.set(line);
            for (Circuit.Spot s : circuit.ends(line)) {
                circuit.reference(s.end()).ifPresent(r -> circuit.mates(r)
                        .forEach(m -> circuit.atReference(m).forEach(t -> open.add(t.line()))));
                circuit.port(s.end()).filter(p -> isFollowed(p.component())).ifPresent(p -> p.component()
                        .ports()
                        .forEach(o -> circuit.atPort(o).forEach(t -> open.add(t.line()))));
            }
        }
    }
}
