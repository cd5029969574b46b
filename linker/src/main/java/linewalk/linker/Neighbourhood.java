package linewalk.linker;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Line;
import linewalk.drawing.Port;

/**
 * What is joined to what by lines, crossings of sheets and parts, whichever way and however oil may flow. Whoever must
 * know what could still be under pressure asks for joins, not for flow.
 */
public final class Neighbourhood {

    /** Parts and lines in the order in which they were reached; the lines begun from are among them. */
    public record Reached(Set<Component> parts, Set<Line> lines) {}

    private final Circuit circuit;
    /** Of lines by their ids, in the order of the set. */
    private final Map<String, List<Integer>> numbers = new HashMap<>();

    public Neighbourhood(DrawingSet set) {
        circuit = new Circuit(set);
        for (int i = 0; i < circuit.lines.size(); i++) {
            numbers.computeIfAbsent(circuit.lines.get(i).id(), k -> new ArrayList<>(1))
                    .add(i);
        }
    }

    /** The lines at a part. */
    public Set<Line> linesAt(Component part) {
        Set<Line> lines = new LinkedHashSet<>();
        for (Port p : part.ports()) {
            circuit.atPort(p).forEach(s -> lines.add(circuit.lines.get(s.line())));
        }
        return lines;
    }

    /**
     * Spreads from lines over mates, doubtful ones too, and through parts.
     *
     * @param from lines of the set
     * @param passed whether to go on through a part, by any of its ports and of its other drawings' ports
     */
    public Reached from(Collection<Line> from, Predicate<Component> passed) {
        return new Spread(passed).over(from);
    }

    private final class Spread {
        private final Predicate<Component> passed;
        private final Set<Component> parts = new LinkedHashSet<>();
        private final BitSet seen = new BitSet();
        private final Deque<Integer> open = new ArrayDeque<>();
        private final Set<Line> lines = new LinkedHashSet<>();

        Spread(Predicate<Component> passed) {
            this.passed = passed;
        }

        Reached over(Collection<Line> from) {
            from.stream()
                    .flatMap(l -> numbers.getOrDefault(l.id(), List.of()).stream()
                            .filter(i -> circuit.lines.get(i).equals(l)))
                    .sorted()
                    .forEach(this::reach);
            while (!open.isEmpty()) {
                for (Circuit.Spot s : circuit.ends(open.removeFirst())) {
                    circuit.reference(s.end()).ifPresent(r -> circuit.mates(r)
                            .forEach(m -> circuit.atReference(m).forEach(t -> reach(t.line()))));
                    circuit.port(s.end()).map(Circuit.PortAt::component).ifPresent(this::arrive);
                }
            }
            return new Reached(parts, lines);
        }

        private void reach(int line) {
            if (!seen.get(line)) {
                seen.set(line);
                lines.add(circuit.lines.get(line));
                open.addLast(line);
            }
        }

        private void arrive(Component c) {
            if (parts.add(c) && passed.test(c)) {
                for (Component drawn : drawings(c)) {
                    drawn.ports().forEach(p -> circuit.atPort(p).forEach(s -> reach(s.line())));
                }
            }
        }
    }

    private List<Component> drawings(Component c) {
        String tag = Names.plain(c.tag());
        return tag.isEmpty() ? List.of(c) : new ArrayList<>(circuit.tagged(tag));
    }
}
