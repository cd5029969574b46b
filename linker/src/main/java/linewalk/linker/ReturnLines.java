package linewalk.linker;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import linewalk.drawing.Component;
import linewalk.drawing.Port;

/** Lines with nothing but passive parts between them and a tank, found once for the whole set. */
final class ReturnLines {

    private final Circuit circuit;
    private final BitSet found = new BitSet();

    ReturnLines(Circuit circuit) {
        this.circuit = circuit;
        Deque<Integer> open = new ArrayDeque<>();
        for (Component tank : circuit.tanks()) {
            tank.ports().forEach(p -> circuit.atPort(p).forEach(s -> open.add(s.line())));
        }
        while (!open.isEmpty()) {
            int line = open.pop();
            if (!found.get(line)) {
                found.set(line);
                circuit.ends(line).forEach(s -> beyond(s, open));
            }
        }
    }

    private void beyond(Circuit.Spot end, Deque<Integer> open) {
        circuit.reference(end.end()).ifPresent(r -> circuit.mates(r)
                .forEach(m -> circuit.atReference(m).forEach(s -> open.add(s.line()))));
        circuit.port(end.end()).filter(p -> PumpSides.passive(p.component())).ifPresent(p -> p.component()
                .ports()
                .forEach(o -> circuit.atPort(o).forEach(s -> open.add(s.line()))));
    }

    boolean at(Port port) {
        return circuit.atPort(port).stream().anyMatch(s -> found.get(s.line()));
    }
}
