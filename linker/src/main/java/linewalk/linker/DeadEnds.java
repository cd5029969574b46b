package linewalk.linker;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.Stream;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.linker.Circuit.PortAt;
import linewalk.linker.Circuit.Spot;

/** Where a trace that does not arrive ends, and why: the farthest it gets, told by what stops it there. */
final class DeadEnds {

    /** What stops a walk, the most telling first. */
    enum Cause {
        SHUT,
        UNMATED,
        UNTOLD,
        LOOSE,
        BACKWARDS,
        LAST_PART
    }

    record Stop(Walk walk, Spot end, Cause cause, String why) {
        int elements() {
            return (int) (walk.cost & 0xffff);
        }
    }

    private record Place(int line, int passed) {}

    private final Moves moves;
    private final Route route;
    private final Circuit circuit;
    private final MachineState state;

    DeadEnds(Moves moves, Route route, MachineState state) {
        this.moves = moves;
        this.route = route;
        this.circuit = moves.circuit;
        this.state = state;
    }

    /** The farthest stop; empty where no line leaves the start. */
    Optional<Stop> farthest() {
        return stops().max(Comparator.<Stop>comparingInt(s -> s.walk.passed)
                .thenComparing(s -> !Cost.offTheMain(s.walk.cost))
                .thenComparing(Stop::cause, Comparator.reverseOrder())
                .thenComparingInt(Stop::elements)
                .thenComparing(Stop::walk, (a, b) -> Walk.byNames(b, a)));
    }

    /** A place on the main lines where it is not known how the oil goes on. */
    Optional<Stop> unknown() {
        return stops().filter(s -> !Cost.offTheMain(s.walk.cost))
                .filter(s -> s.cause == Cause.UNMATED || s.cause == Cause.UNTOLD)
                .max(Comparator.comparingInt(Stop::elements).thenComparing(Stop::walk, (a, b) -> Walk.byNames(b, a)));
    }

    private Stream<Stop> stops() {
        return reached().values().stream().flatMap(w -> circuit.ends(w.at.line()).stream()
                .filter(s -> s != w.at && moves.from(s).isEmpty())
                .filter(s -> !circuit.port(s.end()).filter(route::endsAt).isPresent())
                .map(s -> stop(w, s)));
    }

    /** The cheapest walk to each line. */
    private Map<Place, Walk> reached() {
        Map<Place, Walk> reached = new HashMap<>();
        PriorityQueue<Walk> queue =
                new PriorityQueue<>(Comparator.<Walk>comparingLong(w -> w.cost).thenComparing(Walk::byNames));
        queue.addAll(Search.starts(moves, route));
        while (!queue.isEmpty()) {
            Walk w = queue.remove();
            if (reached.putIfAbsent(new Place(w.at.line(), w.passed), w) != null) {
                continue;
            }
            for (Spot s : circuit.ends(w.at.line())) {
                for (Move m : s == w.at ? List.<Move>of() : moves.from(s)) {
                    int passed = m.pass() == null
                            ? w.passed
                            : route.after(w.passed, m.pass().component());
                    if (!reached.containsKey(new Place(m.enter().line(), passed)) && w.allows(m)) {
                        queue.add(w.go(m, passed));
                    }
                }
            }
        }
        return reached;
    }

    private Stop stop(Walk w, Spot s) {
        Optional<PortAt> port = circuit.port(s.end());
        if (port.isPresent()) {
            return atPort(w, s, port.get());
        }
        Optional<Reference> reference = circuit.reference(s.end());
        if (reference.isPresent()) {
            Reference r = reference.get();
            String why = r.mates().isEmpty()
                    ? "it has no mate"
                    : circuit.mates(r).stream()
                                    .allMatch(m -> circuit.atReference(m).isEmpty())
                            ? "no line was read at its mate"
                            : "its mate is not sure";
            return new Stop(w, s, Cause.UNMATED, "ends at reference " + circuit.address(r) + ": " + why);
        }
        Line line = circuit.lines.get(w.at.line());
        String name = line.label() == null ? "the line" : "line " + line.label();
        return new Stop(
                w, s, Cause.LOOSE, "ends on " + address(line, s.end()) + ": " + name + " ends in nothing there");
    }

    private static boolean comesOut(Passage x, Port port) {
        return x.to().equals(port.id()) && (x.oneWay() || x.opens() != null);
    }

    private String address(Line line, End end) {
        return circuit.set.address(line.page(), end.place());
    }

    private Stop atPort(Walk w, Spot s, PortAt at) {
        Component c = at.component();
        String where = "ends at " + circuit.address(c, at.port()) + ": ";
        LineKind kind = circuit.lines.get(s.line()).kind();
        if (PortRoles.namedAside(at.port())
                || kind != LineKind.WORKING
                || c.ports().size() == 1) {
            return new Stop(w, s, Cause.LAST_PART, where + "the oil goes no farther there");
        }
        Position now = state.of(c);
        if (now != null && now.passages().stream().anyMatch(x -> comesOut(x, at.port()))) {
            return new Stop(w, s, Cause.BACKWARDS, where + "it lets oil out there, none in");
        } else if (moves.passes.againstReturn(c, at.port())) {
            return new Stop(
                    w, s, Cause.BACKWARDS, where + "this line is open to the tank, so oil leaves the valve there");
        } else if (!c.positions().isEmpty() && now != null) {
            return new Stop(w, s, Cause.SHUT, where + state.words(c) + " it joins this port to nothing");
        } else if (moves.passes.closed(c)) {
            return new Stop(w, s, Cause.SHUT, where + "it is normally closed; name it with --via to pass it");
        } else if (moves.passes.againstRelief(c, at.port())) {
            return new Stop(w, s, Cause.SHUT, where + "a relief valve lets no oil back from its return side");
        } else if (moves.passes.known(c)) {
            return new Stop(w, s, Cause.LAST_PART, where + "no oil passes it that way");
        } else if (Passes.guessed(c) && c.ports().size() == 2) {
            return new Stop(w, s, Cause.UNTOLD, where + "what it joins inside is not known");
        }
        boolean noLine = moves.passes.from(c, at.port()).stream()
                        .allMatch(p -> circuit.atPort(p.out()).isEmpty())
                && !moves.passes.from(c, at.port()).isEmpty();
        String why = noLine ? "no line was read at its other port" : "what it joins inside is not known";
        return new Stop(w, s, Cause.UNTOLD, where + why);
    }
}
