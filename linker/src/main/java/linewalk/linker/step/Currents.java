package linewalk.linker.step;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Kind;

/**
 * Which way oil flows where a part meets a volume. It flows where a way leads from what gives oil (a pump's outlet, an
 * accumulator, a load that sinks) through the part and on to what takes it (the tank, the pump's other side). What may
 * flow but need not, or either way, is not known.
 */
final class Currents {

    /** Where a part meets a volume. */
    private record Tap(int part, int volume) {}

    /** What a way through a part takes in and gives out at; null where it leads to nowhere known. */
    private record Through(Tap in, Tap out) {}

    private final Classes oil;
    private final Hydraulics now;
    private final Net net;
    private final int tank;
    private final Streams streams;
    private final List<Through> through = new ArrayList<>();
    private final Map<Tap, Sense> senses = new HashMap<>();

    private Currents(Classes oil) {
        this.oil = oil;
        this.now = oil.now;
        this.net = now.net;
        this.tank = net.nowhere();
        this.streams = new Streams(net.size, tank);
    }

    static Currents of(Classes oil) {
        Currents c = new Currents(oil);
        c.links();
        c.net.actuators.forEach(c::actuator);
        c.pumps();
        c.otherSources();
        return c;
    }

    /** At a port of a part, by the volume there. */
    Sense at(Part part, int volume) {
        return part.kind() == Kind.TANK || part.kind() == Kind.ACCUMULATOR
                ? Sense.UNKNOWN
                : senses.getOrDefault(new Tap(part.index(), volume), Sense.STILL);
    }

    /** Where a line leads off to nowhere known. */
    Sense atLooseEnd() {
        return now.guesses() ? Sense.UNKNOWN : Sense.STILL;
    }

    /** All tanks are one. */
    private int node(int volume) {
        return net.tank[volume] ? tank : volume;
    }

    private void way(int from, int to, Tap in, Tap out) {
        if (node(from) != node(to)) {
            streams.add(node(from), node(to));
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
                way(from, to, part < 0 ? null : new Tap(part, from), part < 0 ? null : new Tap(part, to));
            }
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
        if (driven.size() > 1) {
            driven.forEach(t -> senses.put(t, Sense.UNKNOWN));
        } else if (driven.size() == 1 && ports.size() == 1) {
            way(driven.get(0).volume, tank, driven.get(0), null);
        } else if (driven.size() == 1) {
            rest.forEach(t -> way(driven.get(0).volume, t.volume, driven.get(0), t));
        }
    }

    private void pumps() {
        for (Pumps.Sides s : now.running) {
            for (int o : now.counts(s) ? s.outlets() : new int[0]) {
                pumped(s, o);
            }
        }
    }

    private void pumped(Pumps.Sides pump, int outlet) {
        Tap out = new Tap(pump.part().index(), outlet);
        boolean open = node(outlet) != tank && flow(node(outlet), tank);
        for (int s : pump.suctions()) {
            boolean round = node(s) != tank && flow(node(outlet), node(s));
            if (open && node(s) != tank) {
                flow(tank, node(s));
            }
            if (open || round) {
                sense(new Tap(pump.part().index(), s), Sense.OUT);
            }
            open |= round;
        }
        if (open) {
            sense(out, Sense.IN);
        }
    }

    private void otherSources() {
        for (int a : now.accumulators()) {
            if (oil.classes[a] == PressureClass.HELD) {
                flow(node(a), tank);
            }
        }
        for (List<Part> drawn : net.actuators) {
            for (Part p : drawn) {
                List<Integer> ports = p.workingVolumes();
                if (drawn.size() == 1 && ports.size() == 1 && oil.leaving[ports.get(0)] && flow(ports.get(0), tank)) {
                    sense(new Tap(p.index(), ports.get(0)), Sense.IN);
                }
            }
        }
        for (int v = 0; v < net.size; v++) {
            if (now.pressed(v)) {
                flow(node(v), tank);
            }
        }
    }

    /** Whether oil can go from here to there; if so, it does, on all ways between. */
    private boolean flow(int source, int sink) {
        if (source == sink || !streams.leads(source, sink)) {
            return false;
        }
        Streams.Taken[] taken = streams.between(source, sink);
        for (int k = 0; k < taken.length; k++) {
            if (taken[k] != Streams.Taken.NOT) {
                boolean sure = taken[k] == Streams.Taken.SURELY;
                sense(through.get(k).in, sure ? Sense.OUT : Sense.UNKNOWN);
                sense(through.get(k).out, sure ? Sense.IN : Sense.UNKNOWN);
            }
        }
        return true;
    }

    private void sense(Tap tap, Sense sense) {
        if (tap != null) {
            senses.merge(tap, sense, Sense::and);
        }
    }
}
