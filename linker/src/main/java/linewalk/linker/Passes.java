package linewalk.linker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/** What each component joins inside in the machine's state, and against how much resistance. */
final class Passes {

    private static final Set<Kind> ENDS = EnumSet.of(
            Kind.TANK, Kind.ACCUMULATOR, Kind.GAUGE, Kind.SWITCH, Kind.BRAKE, Kind.PLUG, Kind.ELECTRIC_MOTOR);
    /** What these join depends on where they stand, so two ports alone do not say that oil passes. */
    static final Set<Kind> SWITCHING =
            EnumSet.of(Kind.DIRECTIONAL_VALVE, Kind.PROPORTIONAL_VALVE, Kind.CARTRIDGE_VALVE);

    /** A load-holding valve's port towards the directional valve, free to flow in: common practice, no source. */
    private static final String VALVE_SIDE = "V";

    private static final Set<Kind> OPENED = EnumSet.of(
            Kind.PILOT_CHECK_VALVE,
            Kind.COUNTERBALANCE_VALVE,
            Kind.SEQUENCE_VALVE,
            Kind.UNLOADING_VALVE,
            Kind.PREFILL_VALVE,
            Kind.DECOMPRESSION_VALVE,
            Kind.CARTRIDGE_VALVE);

    private final Circuit circuit;
    private final PortRoles roles;
    private final ReturnLines returns;
    private final PumpSides pumps;
    private final MachineState state;
    private final boolean anyPosition;
    private final Set<String> named;

    /** @param named plain designations in the question's via: reliefs and closed shut-offs among them open */
    Passes(Circuit circuit, PumpSides pumps, MachineState state, boolean anyPosition, Set<String> named) {
        this.circuit = circuit;
        this.roles = new PortRoles(circuit);
        this.returns = new ReturnLines(circuit, pumps);
        this.pumps = pumps;
        this.state = state;
        this.anyPosition = anyPosition;
        this.named = named;
    }

    /** The ways on for oil that comes into a port. */
    List<Pass> from(Component c, Port in) {
        List<Pass> passes = new ArrayList<>();
        if (c.kind().isActuator()) {
            actuator(c, in, passes);
        } else if (c.kind() == Kind.PUMP) {
            pump(c, in, passes);
        } else if (!ENDS.contains(c.kind())) {
            inside(c, in, passes);
            passes.removeIf(p -> outOfReturn(c, in, p.out()));
            twins(c, in, passes);
        }
        return passes;
    }

    /** Oil that came to a line open to the tank goes down to it, not up through a valve: no pressure drives it. */
    private boolean outOfReturn(Component c, Port in, Port out) {
        return SWITCHING.contains(c.kind()) && returns.at(in) && !returns.at(out);
    }

    /** A valve's port at which oil leaves it for the tank. */
    boolean againstReturn(Component c, Port in) {
        return SWITCHING.contains(c.kind()) && returns.at(in);
    }

    private List<Component> drawings(Component c) {
        String tag = Names.plain(c.tag());
        return tag.isEmpty() ? List.of(c) : circuit.tagged(tag);
    }

    /** Oil in at one working port, other oil out of the others, on whatever sheet they are drawn. */
    private void actuator(Component c, Port in, List<Pass> passes) {
        if (!roles.working(in)) {
            return;
        }
        for (Component drawing : drawings(c)) {
            for (Port out : roles.working(drawing)) {
                if (!out.equals(in)) {
                    boolean twin = in.name() != null && in.name().equalsIgnoreCase(out.name());
                    passes.add(new Pass(c, in, out, null, null, null, twin ? Cost.OPEN : Cost.OPENED, false));
                }
            }
        }
    }

    /** From the suction to the pressure side only. */
    private void pump(Component c, Port in, List<Pass> passes) {
        PumpSides.Sides sides = state.sides(c, pumps);
        if (roles.working(in) && !sides.pressure().contains(in)) {
            sides.pressure()
                    .forEach(out -> passes.add(new Pass(c, in, out, null, null, null, Cost.OPEN, sides.guessed())));
        }
    }

    /** One port drawn on several sheets is one port. */
    private void twins(Component c, Port in, List<Pass> passes) {
        if (in.name() == null) {
            return;
        }
        for (Component drawing : drawings(c)) {
            if (drawing != c) {
                drawing.findPortNamed(in.name())
                        .ifPresent(out -> passes.add(new Pass(c, in, out, null, null, null, Cost.OPEN, false)));
            }
        }
    }

    private void inside(Component c, Port in, List<Pass> passes) {
        if (c.positions().isEmpty()) {
            untold(c, in, passes);
            return;
        }
        Position now = state.of(c);
        if (anyPosition) {
            c.positions().forEach(p -> position(c, in, p, p.equals(now) ? null : p, passes));
        } else if (now != null) {
            standing(c, in, now, passes);
            openedByPilot(c, in, now, passes);
        }
    }

    /** What a pilot holds open now is still harder to pass than what stands open, but for the way it lets oil go anyway. */
    private void standing(Component c, Port in, Position now, List<Pass> passes) {
        if (now.how() == Position.How.PILOT && !SWITCHING.contains(c.kind())) {
            c.rest().ifPresent(rest -> position(c, in, rest, null, passes));
            added(c, in, now, Cost.OPENED, passes);
        } else {
            position(c, in, now, null, passes);
        }
    }

    /** A pilot check or counterbalance valve may be opened by its pilot line; oil takes that way only where none is easier. */
    private void openedByPilot(Component c, Port in, Position now, List<Pass> passes) {
        if (SWITCHING.contains(c.kind())) {
            return;
        }
        long cost = state.tellsPilots() ? Cost.OPENABLE : Cost.OPENED;
        for (Position p : c.positions()) {
            if (p.how() == Position.How.PILOT && !p.equals(now)) {
                added(c, in, p, cost, passes);
            }
        }
    }

    /** Ways that another position adds to those there are, each at the cost of opening it. */
    private void added(Component c, Port in, Position p, long cost, List<Pass> passes) {
        List<Passage> opened = p.passages().stream()
                .map(x -> new Passage(x.from(), x.to(), x.oneWay(), x.throttled(), Passage.Opens.PILOT))
                .toList();
        List<Pass> more = new ArrayList<>();
        position(c, in, new Position(p.by(), p.how(), opened), null, more);
        more.removeIf(m -> passes.stream().anyMatch(o -> o.out().equals(m.out())));
        more.forEach(m -> passes.add(
                new Pass(m.component(), m.in(), m.out(), m.passage(), m.position(), m.shift(), cost, m.unread())));
    }

    /** Of several passages between two ports the easiest counts: a throttle beside a check. */
    private void position(Component c, Port in, Position p, Position shift, List<Pass> passes) {
        List<Pass> found = new ArrayList<>();
        for (Passage x : p.passages()) {
            boolean forth = x.from().equals(in.id());
            boolean back = x.to().equals(in.id()) && !x.oneWay();
            if (forth || back) {
                c.findPort(forth ? x.to() : x.from())
                        .ifPresent(out -> found.add(new Pass(c, in, out, x, p, shift, cost(c, x, shift), false)));
            }
        }
        found.sort(Comparator.comparingLong(Pass::cost));
        for (Pass f : found) {
            if (passes.stream().noneMatch(o -> o.out().equals(f.out()) && o.position() == f.position())) {
                passes.add(f);
            }
        }
    }

    private long cost(Component c, Passage x, Position shift) {
        long moved = shift == null ? 0 : Cost.ELEMENT;
        if (c.kind() == Kind.RELIEF_VALVE) {
            return moved + relief(c);
        } else if (x.opens() != null) {
            return moved + Cost.OPENED;
        } else if (x.throttled()) {
            return moved + Cost.THROTTLE;
        }
        boolean check = x.oneWay() && !SWITCHING.contains(c.kind());
        return moved + (check ? Cost.CHECK : Cost.OPEN);
    }

    private long relief(Component c) {
        return named.contains(Names.plain(c.tag())) ? Cost.OPENED : Cost.RELIEF;
    }

    /** Two working ports pass; everything else stops the oil until its passages are known. */
    private void untold(Component c, Port in, List<Pass> passes) {
        List<Port> ports = roles.passing(c);
        if (ports.size() != 2 || !ports.contains(in) || closed(c) || againstRelief(c, in)) {
            return;
        }
        Port out = ports.get(ports.get(0).equals(in) ? 1 : 0);
        if (drain(c, in) || drain(c, out)) {
            return;
        }
        passes.add(new Pass(c, in, out, null, null, null, untoldCost(c, in), guessed(c)));
    }

    /** A relief lets oil out to the return side, never back. */
    boolean againstRelief(Component c, Port in) {
        return c.kind() == Kind.RELIEF_VALVE
                && returns.at(in)
                && roles.passing(c).stream().anyMatch(out -> !out.equals(in) && !returns.at(out));
    }

    /** A reducing valve's third line, where it leads to the tank, takes the spring's oil and none of the inlet's. */
    private boolean drain(Component c, Port port) {
        return c.kind() == Kind.REDUCING_VALVE && c.ports().size() > 2 && returns.at(port);
    }

    /** Passed untold, though what it joins depends on where it stands; a logic element is opened by the oil itself. */
    static boolean guessed(Component c) {
        return SWITCHING.contains(c.kind())
                && c.kind() != Kind.CARTRIDGE_VALVE
                && c.positions().isEmpty();
    }

    /** Drawn or listed as normally closed, and not named as one to pass. */
    boolean closed(Component c) {
        Boolean open = c.kind() == Kind.SHUT_OFF_VALVE ? state.open(c) : null;
        return (open == null ? normallyClosed(c) : !open) && !named.contains(Names.plain(c.tag()));
    }

    static boolean normallyClosed(Component c) {
        return c.kind() == Kind.SHUT_OFF_VALVE && c.normallyClosed();
    }

    private long untoldCost(Component c, Port in) {
        if (c.kind() == Kind.COUNTERBALANCE_VALVE && VALVE_SIDE.equals(in.name())) {
            return Cost.CHECK;
        }
        return switch (c.kind()) {
            case RELIEF_VALVE -> relief(c);
            case CHECK_VALVE -> Cost.CHECK;
            case FLOW_CONTROL, ORIFICE -> Cost.THROTTLE;
            default -> OPENED.contains(c.kind()) ? Cost.OPENED : Cost.OPEN;
        };
    }

    /** Ports lead on in some position or another, only not in this one. */
    boolean known(Component c) {
        return !c.positions().isEmpty() && state.of(c) != null || ENDS.contains(c.kind()) || c.kind() == Kind.PUMP;
    }
}
