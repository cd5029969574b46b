package linewalk.linker;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.Flow;
import linewalk.drawing.Kind;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;

/**
 * Which side of a pump is the pressure side. In this order: ports named so; a suction port that says so or reaches a
 * tank through nothing but shut-offs, strainers and the like, the fewest; check valves and arrows at references. Oil never leaves by
 * suction or drain.
 */
final class PumpSides {

    /** @param guessed nothing told the sides apart */
    record Sides(List<Port> pressure, List<Port> suction, boolean guessed) {}

    private static final Set<Kind> PASSIVE = EnumSet.of(
            Kind.SHUT_OFF_VALVE, Kind.STRAINER, Kind.FILTER, Kind.HOSE, Kind.SWIVEL, Kind.COOLER, Kind.HEATER);
    private static final int NEVER = Integer.MAX_VALUE;

    /** What a walk from a port through passive parts meets: how many parts until the tank, and arrows on the way. */
    private record Reach(int partsToTank, boolean arrowIn, boolean arrowOut) {}

    private final Circuit circuit;
    private final PortRoles roles;
    private final Map<String, Sides> known = new HashMap<>();

    PumpSides(Circuit circuit) {
        this.circuit = circuit;
        this.roles = new PortRoles(circuit);
    }

    Sides of(Component pump) {
        return known.computeIfAbsent(pump.id(), k -> decide(pump));
    }

    private Sides decide(Component pump) {
        List<Port> ports = roles.working(pump);
        List<Port> named =
                ports.stream().filter(p -> "P".equalsIgnoreCase(p.name())).toList();
        if (!named.isEmpty()) {
            return sides(ports, named, false);
        }
        List<Port> left = ports.stream().filter(p -> !suctionName(p)).toList();
        if (left.size() <= 1) {
            return sides(ports, left, false);
        }
        return byLines(ports, left);
    }

    private static boolean suctionName(Port p) {
        return p.name() != null && p.name().strip().matches("(?i)S\\d?|T|R");
    }

    private static Sides sides(List<Port> all, List<Port> pressure, boolean guessed) {
        List<Port> suction = new ArrayList<>(all);
        suction.removeAll(pressure);
        return new Sides(pressure, suction, guessed);
    }

    private Sides byLines(List<Port> all, List<Port> left) {
        Map<Port, Reach> reach = new HashMap<>();
        left.forEach(p -> reach.put(p, reach(p)));
        int nearest =
                left.stream().mapToInt(p -> reach.get(p).partsToTank).min().orElse(NEVER);
        List<Port> nearTank =
                left.stream().filter(p -> reach.get(p).partsToTank == nearest).toList();
        if (nearest < NEVER && nearTank.size() < left.size()) {
            return sides(all, minus(left, nearTank), false);
        }
        List<Port> in = left.stream()
                .filter(p -> reach.get(p).arrowIn && !reach.get(p).arrowOut)
                .toList();
        if (!in.isEmpty() && in.size() < left.size()) {
            return sides(all, minus(left, in), false);
        }
        List<Port> out = left.stream()
                .filter(p -> reach.get(p).arrowOut && !reach.get(p).arrowIn)
                .toList();
        boolean some = !out.isEmpty() && out.size() < left.size();
        return sides(all, some ? out : left, !some);
    }

    private static List<Port> minus(List<Port> all, List<Port> some) {
        return all.stream().filter(p -> !some.contains(p)).toList();
    }

    /** @param abroad reached over a reference: its arrows are seen from the other side */
    private record At(int line, int parts, boolean abroad) {}

    private Reach reach(Port start) {
        int partsToTank = NEVER;
        boolean in = false;
        boolean out = false;
        Deque<At> queue = new ArrayDeque<>();
        Set<Integer> seen = new HashSet<>();
        circuit.atPort(start).forEach(s -> queue.add(new At(s.line(), 0, false)));
        while (!queue.isEmpty()) {
            At at = queue.removeFirst();
            if (!seen.add(at.line)) {
                continue;
            }
            for (Circuit.Spot s : circuit.ends(at.line)) {
                Reference r = circuit.reference(s.end()).orElse(null);
                Circuit.PortAt p = circuit.port(s.end()).orElse(null);
                if (r != null) {
                    in |= !at.abroad && r.flow() == Flow.IN;
                    out |= !at.abroad && r.flow() == Flow.OUT;
                    across(r, at, queue);
                } else if (p != null && p.component().kind() == Kind.TANK) {
                    partsToTank = Math.min(partsToTank, at.parts);
                } else if (p != null && !p.port().equals(start)) {
                    in |= !at.abroad && check(p, false);
                    out |= !at.abroad && check(p, true);
                    beyond(p, at, queue);
                }
            }
        }
        return new Reach(partsToTank, in, out);
    }

    /** A check valve that lets oil go from here on, or only come to here. */
    private static boolean check(Circuit.PortAt p, boolean onward) {
        return p.component().kind() == Kind.CHECK_VALVE
                && p.component().rest().stream()
                        .flatMap(rest -> rest.passages().stream())
                        .anyMatch(x -> x.oneWay()
                                && (onward ? x.from() : x.to()).equals(p.port().id()));
    }

    private void across(Reference r, At at, Deque<At> queue) {
        circuit.mates(r)
                .forEach(m -> circuit.atReference(m).forEach(t -> queue.addFirst(new At(t.line(), at.parts, true))));
    }

    private void beyond(Circuit.PortAt p, At at, Deque<At> queue) {
        Component c = p.component();
        if (passive(c)) {
            Port other = c.ports().get(c.ports().get(0).equals(p.port()) ? 1 : 0);
            circuit.atPort(other).forEach(s -> queue.addLast(new At(s.line(), at.parts + 1, at.abroad)));
        }
    }

    /** Oil passes either way without being told to. */
    static boolean passive(Component c) {
        return PASSIVE.contains(c.kind()) && c.ports().size() == 2 && !Passes.normallyClosed(c);
    }

    /** The tank's ports from which pumps draw; all where none is known to. */
    List<Port> drawnFrom(List<Component> tanks) {
        List<Port> all = tanks.stream().flatMap(t -> t.ports().stream()).toList();
        List<Port> drawn = all.stream().filter(this::feedsPump).toList();
        return drawn.isEmpty() ? all : drawn;
    }

    private boolean feedsPump(Port tankPort) {
        Deque<At> queue = new ArrayDeque<>();
        Set<Integer> seen = new HashSet<>();
        circuit.atPort(tankPort).forEach(s -> queue.add(new At(s.line(), 0, false)));
        while (!queue.isEmpty()) {
            At at = queue.removeFirst();
            if (!seen.add(at.line)) {
                continue;
            }
            for (Circuit.Spot s : circuit.ends(at.line)) {
                Circuit.PortAt p = circuit.port(s.end()).orElse(null);
                if (p != null
                        && p.component().kind() == Kind.PUMP
                        && of(p.component()).suction().contains(p.port())) {
                    return true;
                } else if (p != null) {
                    beyond(p, at, queue);
                }
                circuit.reference(s.end()).ifPresent(r -> across(r, at, queue));
            }
        }
        return false;
    }
}
