package linewalk.linker;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.function.Predicate;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Port;

/**
 * Lines with nothing but passive parts between them and a tank, found once for the whole set. A shut-off valve between such
 * a line and one that a pump feeds stands closed, told or not: nobody pumps into an open way to the tank.
 */
final class ReturnLines {

    private final Circuit circuit;
    private final BitSet found = new BitSet();

    ReturnLines(Circuit circuit, PumpSides pumps) {
        this.circuit = circuit;
        List<Port> tanks =
                circuit.tanks().stream().flatMap(t -> t.ports().stream()).toList();
        List<Port> pressure = circuit.pumps().stream()
                .flatMap(p -> pumps.of(p).pressure().stream())
                .toList();
        Predicate<Component> open = c -> PumpSides.passive(c) && c.kind() != Kind.SHUT_OFF_VALVE;
        BitSet never = new BitSet();
        BitSet atTank = new BitSet();
        reach(tanks, open, never, atTank);
        BitSet fed = new BitSet();
        reach(pressure, open.or(c -> c.kind() == Kind.CHECK_VALVE), atTank, fed);
        reach(tanks, PumpSides::passive, fed, found);
    }

    private void reach(List<Port> from, Predicate<Component> through, BitSet except, BitSet lines) {
        Deque<Integer> open = new ArrayDeque<>();
        from.forEach(p -> circuit.atPort(p).forEach(s -> open.add(s.line())));
        while (!open.isEmpty()) {
            int line = open.pop();
            if (!lines.get(line) && !except.get(line)) {
                lines.set(line);
                circuit.ends(line).forEach(s -> beyond(s, through, open));
            }
        }
    }

    private void beyond(Circuit.Spot end, Predicate<Component> through, Deque<Integer> open) {
        circuit.reference(end.end()).ifPresent(r -> circuit.mates(r)
                .forEach(m -> circuit.atReference(m).forEach(s -> open.add(s.line()))));
        circuit.port(end.end()).filter(p -> through.test(p.component())).ifPresent(p -> p.component()
                .ports()
                .forEach(o -> circuit.atPort(o).forEach(s -> open.add(s.line()))));
    }

    boolean at(Port port) {
        return circuit.atPort(port).stream().anyMatch(s -> found.get(s.line()));
    }
}
