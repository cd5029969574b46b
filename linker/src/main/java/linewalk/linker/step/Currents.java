package linewalk.linker.step;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Kind;

/**
 * Which way oil flows where a part meets a volume. It flows where a way leads from what gives oil (a pump's outlet, an
 * accumulator, a load that sinks) through the part and on to what takes it (the tank, the pump's other side). What may
 * flow but need not, or either way, is not known.
 */
final class Currents {

    private static final Set<Kind> CHECKS = EnumSet.of(Kind.CHECK_VALVE, Kind.PILOT_CHECK_VALVE);
    /** Opened by so much pressure: oil takes another way where it has one. */
    private static final Set<Kind> OPENED =
            EnumSet.of(Kind.PREFILL_VALVE, Kind.SEQUENCE_VALVE, Kind.UNLOADING_VALVE, Kind.INTENSIFIER);

    /** Where a part meets a volume. */
    private record Tap(int part, int volume) {}

    /** What a way through a part takes in and gives out at; null where it leads to nowhere known. */
    private record Through(Tap in, Tap out) {}

    private final Classes oil;
    private final Set<List<Part>> arrived;
    private final Hydraulics now;
    private final Net net;
    private final int tank;
    private final Streams streams;
    private final List<Through> through = new ArrayList<>();
    private final Map<Tap, Set<Sense>> sure = new HashMap<>();
    private final Map<Tap, Set<Sense>> possible = new HashMap<>();

    private Currents(Classes oil, Set<List<Part>> arrived) {
        this.oil = oil;
        this.arrived = arrived;
        this.now = oil.now;
        this.net = now.net;
        this.tank = net.nowhere();
        this.streams = new Streams(net.size, tank);
    }

    /** @param before the step before, or null where there is none: a cylinder that was driven alike may have come to its end */
    static Currents of(Classes oil, Classes before) {
        Set<List<Part>> arrived = new HashSet<>();
        for (List<Part> drawn : oil.now.net.actuators) {
            boolean alike = before != null
                    && drawn.get(0).kind() == Kind.CYLINDER
                    && drawn.stream()
                            .flatMap(p -> p.workingVolumes().stream())
                            .allMatch(v -> oil.driving[v] == before.driving[v] && oil.leaving[v] == before.leaving[v]);
            if (alike) {
                arrived.add(drawn);
            }
        }
        Currents c = new Currents(oil, arrived);
        c.links();
        c.net.parts.forEach(c::unloading);
        c.net.actuators.forEach(c::actuator);
        c.pumps();
        c.otherSources();
        return c;
    }

    /** At a port of a part, by the volume there. */
    Sense at(Part part, int volume) {
        if (part.kind() == Kind.TANK || part.kind() == Kind.ACCUMULATOR) {
            return Sense.UNKNOWN;
        }
        Tap tap = new Tap(part.index(), volume);
        Set<Sense> may = possible.getOrDefault(tap, Set.of());
        if (may.isEmpty()) {
            return Sense.STILL;
        }
        return may.size() == 1 && may.equals(sure.get(tap)) ? may.iterator().next() : Sense.UNKNOWN;
    }

    /** Where a line leads off to nowhere known. */
    Sense atLooseEnd() {
        return now.guesses() ? Sense.UNKNOWN : Sense.STILL;
    }

    /** All tanks are one. */
    private int node(int volume) {
        return net.tank[volume] ? tank : volume;
    }

    private void way(int from, int to, Tap in, Tap out, Streams.Need need, boolean moves) {
        if (node(from) != node(to)) {
            streams.add(node(from), node(to), need, moves);
            through.add(new Through(in, out));
        }
    }

    private void links() {
        Links links = now.links;
        for (int k = 0; k < links.count(); k++) {
            int from = links.from[k];
            int to = links.to[k];
            if (links.has(k, oil.fed[from] ? Links.FEED : Links.DRAIN)) {
                int part = links.part[k];
                Tap in = part < 0 ? null : new Tap(part, from);
                Tap out = part < 0 ? null : new Tap(part, to);
                way(from, to, in, out, need(part), false);
            }
        }
    }

    private Streams.Need need(int part) {
        Kind kind = part < 0 ? Kind.UNKNOWN : net.parts.get(part).kind();
        if (CHECKS.contains(kind)) {
            return Streams.Need.NO_BYPASS;
        }
        return part < 0 || OPENED.contains(kind) ? Streams.Need.NOTHING_ELSE : Streams.Need.ALWAYS;
    }

    /** An unloading valve lets off its pump's oil from a pressure on that the step does not tell. */
    private void unloading(Part p) {
        int from = p.named("P");
        int to = p.named("T");
        if (p.kind() == Kind.UNLOADING_VALVE && from >= 0 && to >= 0) {
            way(from, to, new Tap(p.index(), from), new Tap(p.index(), to), Streams.Need.NOTHING_ELSE, false);
        }
    }

    /** What comes in on one side leaves on the other; of a side alone on the way to the tank nothing more is told. */
    private void actuator(List<Part> drawn) {
        List<Tap> ports = new ArrayList<>();
        drawn.forEach(p -> p.workingVolumes().forEach(v -> ports.add(new Tap(p.index(), v))));
        List<Tap> driven = ports.stream().filter(t -> oil.driving[t.volume]).toList();
        List<Tap> left = ports.stream().filter(t -> oil.leaving[t.volume]).toList();
        List<Tap> rest = left.isEmpty()
                ? ports.stream().filter(t -> !oil.driving[t.volume]).toList()
                : left;
        Streams.Need need = arrived.contains(drawn) ? Streams.Need.NEVER : Streams.Need.ALWAYS;
        if (driven.size() > 1) {
            driven.forEach(t -> tell(t, Sense.IN, Streams.Taken.PERHAPS));
            driven.forEach(t -> tell(t, Sense.OUT, Streams.Taken.PERHAPS));
        } else if (driven.size() == 1 && ports.size() == 1) {
            way(driven.get(0).volume, tank, driven.get(0), null, need, true);
        } else if (driven.size() == 1) {
            rest.forEach(t -> way(driven.get(0).volume, t.volume, driven.get(0), t, need, true));
        }
    }

    private void pumps() {
        for (Pumps.Sides s : now.running) {
            for (int o : now.counts(s) ? s.outlets() : new int[0]) {
                pumped(s, o);
            }
        }
    }

    /** What it delivers it takes in, as surely. */
    private void pumped(Pumps.Sides pump, int outlet) {
        Streams.Taken open = node(outlet) == tank ? Streams.Taken.NOT : flow(node(outlet), tank, true);
        for (int s : pump.suctions()) {
            Streams.Taken round = node(s) == tank ? Streams.Taken.NOT : flow(node(outlet), node(s), true);
            if (open != Streams.Taken.NOT && node(s) != tank) {
                flow(tank, node(s), open == Streams.Taken.SURELY);
            }
            open = open.compareTo(round) > 0 ? open : round;
            tell(new Tap(pump.part().index(), s), Sense.OUT, open);
        }
        tell(new Tap(pump.part().index(), outlet), Sense.IN, open);
    }

    private void otherSources() {
        for (int a : now.accumulators()) {
            if (oil.classes[a] == PressureClass.HELD) {
                flow(node(a), tank, true);
            }
        }
        for (List<Part> drawn : net.actuators) {
            for (Part p : drawn) {
                List<Integer> ports = p.workingVolumes();
                if (drawn.size() == 1 && ports.size() == 1 && oil.leaving[ports.get(0)]) {
                    tell(new Tap(p.index(), ports.get(0)), Sense.IN, flow(ports.get(0), tank, true));
                }
            }
        }
        for (int v = 0; v < net.size; v++) {
            if (now.pressed(v)) {
                flow(node(v), tank, true);
            }
        }
    }

    /**
     * Lets oil go from here to there on all ways between.
     *
     * @param surely whether it is sure that there is any
     * @return how surely it goes
     */
    private Streams.Taken flow(int source, int sink, boolean surely) {
        Streams.Taken goes = source == sink ? Streams.Taken.NOT : streams.leads(source, sink);
        if (goes != Streams.Taken.NOT) {
            Streams.Taken[] taken = streams.between(source, sink);
            for (int k = 0; k < taken.length; k++) {
                Streams.Taken now = taken[k] == Streams.Taken.SURELY && !surely ? Streams.Taken.PERHAPS : taken[k];
                tell(through.get(k).in, Sense.OUT, now);
                tell(through.get(k).out, Sense.IN, now);
            }
        }
        return goes;
    }

    private void tell(Tap tap, Sense sense, Streams.Taken taken) {
        if (tap != null && taken != Streams.Taken.NOT) {
            possible.computeIfAbsent(tap, k -> EnumSet.noneOf(Sense.class)).add(sense);
            if (taken == Streams.Taken.SURELY) {
                sure.computeIfAbsent(tap, k -> EnumSet.noneOf(Sense.class)).add(sense);
            }
        }
    }
}
