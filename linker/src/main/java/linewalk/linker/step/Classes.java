package linewalk.linker.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import linewalk.drawing.Kind;

/**
 * The pressure class of each volume, in this order: what a source feeds; what a throttle sets on its way to a load; what
 * leaves loads and pumps for the tank; intake; drains; and of the rest what is open (idle) and what is shut in (held).
 */
final class Classes {

    final Hydraulics now;
    private final Net net;
    private final Links links;
    private final Flood flood;
    final boolean[] fed;
    private final boolean[] unfed;
    private final boolean[] toTank;
    /** Working ports under pressure of actuators whose other oil can leave. */
    final boolean[] driving;
    /** Where oil leaves actuators. */
    final boolean[] leaving;

    final PressureClass[] classes;

    private Classes(Hydraulics now) {
        this.now = now;
        this.net = now.net;
        this.links = now.links;
        this.flood = now.flood;
        fed = net.none();
        unfed = net.none();
        for (int i = 0; i < net.size; i++) {
            fed[i] = flood.fed(i);
            unfed[i] = !fed[i];
        }
        boolean[] ends = net.tank.clone();
        for (int i = 0; i < net.size; i++) {
            ends[i] &= unfed[i];
        }
        toTank = links.upstream(ends, unfed, Links.DRAIN, 0);
        driving = net.none();
        leaving = net.none();
        classes = new PressureClass[net.size];
    }

    static Classes of(Hydraulics now) {
        Classes c = new Classes(now);
        c.fed();
        c.actuators();
        c.metered();
        c.leaving();
        c.intake();
        c.drains();
        c.shutIn();
        c.pilots();
        return c;
    }

    private void fed() {
        boolean[] own = ownOfAccumulators();
        for (int i = 0; i < net.size; i++) {
            if (fed[i]) {
                classes[i] = own[i] ? PressureClass.HELD : Flood.word(flood.rank[i]);
            }
        }
    }

    /** Where no running pump feeds an accumulator, its own line is held, however much it feeds beyond. */
    private boolean[] ownOfAccumulators() {
        boolean[] own = net.none();
        List<Integer> all = now.accumulators();
        if (all.isEmpty()) {
            return own;
        }
        Flood pumpsAlone = now.flood(false, true);
        boolean[] still = net.none();
        for (int i = 0; i < net.size; i++) {
            still[i] = !pumpsAlone.fed(i);
        }
        all.stream().filter(a -> still[a]).forEach(a -> own[a] = true);
        return links.downstream(own, still, Links.PIPE, 0);
    }

    private void actuators() {
        boolean[] intoFed = null;
        for (List<Part> drawn : net.actuators) {
            int[] ports = drawn.stream()
                    .flatMap(p -> p.workingVolumes().stream())
                    .distinct()
                    .mapToInt(v -> v)
                    .toArray();
            int[] in = Arrays.stream(ports).filter(v -> fed[v]).toArray();
            int[] out = Arrays.stream(ports).filter(v -> toTank[v]).toArray();
            boolean single = ports.length == 1 && drawn.get(0).kind() == Kind.CYLINDER;
            if (in.length > 0 && out.length == 0 && in.length < ports.length) {
                intoFed = intoFed == null ? links.upstream(fed, unfed, Links.DRAIN, 0) : intoFed;
                regenerative(ports, intoFed);
            }
            if (in.length > 0 && (out.length > 0 || in.length > 1 || single)) {
                Arrays.stream(in).forEach(v -> driving[v] = true);
            }
            if (in.length > 0 || single) {
                Arrays.stream(out).forEach(v -> leaving[v] = true);
            }
        }
        intensifiers();
    }

    private void intensifiers() {
        for (Part p : net.parts) {
            int drive = p.kind() == Kind.INTENSIFIER ? p.named("P") : -1;
            int back = p.named("T");
            if (drive >= 0 && back >= 0 && fed[drive] && toTank[back]) {
                leaving[back] = true;
            }
        }
    }

    /** Oil that can leave over a check into a line under pressure stands under that pressure itself. */
    private void regenerative(int[] ports, boolean[] intoFed) {
        boolean[] start = net.none();
        for (int v : ports) {
            start[v] = intoFed[v] && !fed[v];
            driving[v] |= fed[v] && Arrays.stream(ports).anyMatch(o -> intoFed[o] && !fed[o]);
        }
        boolean[] open = net.none();
        for (int i = 0; i < net.size; i++) {
            open[i] = intoFed[i] && !fed[i] && !toTank[i];
        }
        boolean[] way = links.downstream(start, open, Links.DRAIN, 0);
        for (int i = 0; i < net.size; i++) {
            if (way[i] && classes[i] == null) {
                classes[i] = PressureClass.SUPPLY;
            }
        }
    }

    /** Between a throttle and what it lets move; where it only lets oil off to the tank, that is return. */
    private void metered() {
        Flood free = now.flood(true, false);
        boolean[] behind = net.none();
        boolean[] moving = net.none();
        boolean[] spilling = net.none();
        boolean some = false;
        for (int i = 0; i < net.size; i++) {
            behind[i] = fed[i] && !free.fed(i) && classes[i] != PressureClass.HELD;
            moving[i] = behind[i] && driving[i];
            spilling[i] = behind[i] && spills(i);
            some |= behind[i];
        }
        if (!some) {
            return;
        }
        boolean[] meters = links.upstream(moving, behind, Links.FEED, 0);
        boolean[] bleeds = links.upstream(spilling, behind, Links.FEED, 0);
        for (int i = 0; i < net.size; i++) {
            if (meters[i] && classes[i] != PressureClass.INTENSIFIED) {
                classes[i] = PressureClass.METERED;
            } else if (bleeds[i]) {
                classes[i] = PressureClass.RETURN;
            }
        }
    }

    private boolean spills(int volume) {
        for (int k = links.firstOut[volume]; k >= 0; k = links.nextOut[k]) {
            if (links.has(k, Links.FEED) && now.outlet[links.to[k]]) {
                return true;
            }
        }
        return false;
    }

    /** On the way to tank: return; before a throttle metered; before a counterbalance valve held. */
    private void leaving() {
        boolean[] start = leaving.clone();
        for (int i = 0; i < net.size; i++) {
            start[i] |= flood.spilled[i] && unfed[i];
        }
        boolean[] back = Ways.between(links, start, net.tank, toTank, Links.DRAIN);
        boolean[] moved = Ways.between(links, leaving, net.tank, toTank, Links.DRAIN);
        boolean[] ends = net.none();
        for (int i = 0; i < net.size; i++) {
            ends[i] = net.tank[i] && unfed[i];
        }
        boolean[] freely = links.upstream(ends, unfed, Links.DRAIN, Links.THROTTLE);
        boolean[] unloaded = links.upstream(ends, unfed, Links.DRAIN, Links.LOADED);
        for (int i = 0; i < net.size; i++) {
            if (moved[i] && !unloaded[i]) {
                classes[i] = PressureClass.HELD;
            } else if (moved[i] && !freely[i]) {
                classes[i] = PressureClass.METERED;
            } else if (back[i]) {
                classes[i] = PressureClass.RETURN;
            }
        }
    }

    private void intake() {
        boolean[] suction = net.none();
        for (Pumps.Sides s : now.running) {
            for (int v : s.suctions()) {
                suction[v] = classes[v] == null || classes[v] == PressureClass.RETURN;
            }
        }
        boolean[] open = net.none();
        for (int i = 0; i < net.size; i++) {
            open[i] = classes[i] == null && unfed[i];
        }
        boolean[] drawn = links.upstream(suction, open, Links.DRAIN, 0);
        boolean[] tanks = net.none();
        for (int i = 0; i < net.size; i++) {
            tanks[i] = drawn[i] && net.tank[i];
        }
        boolean[] way = Ways.between(links, tanks, suction, drawn, Links.DRAIN);
        for (int i = 0; i < net.size; i++) {
            if (way[i] || suction[i]) {
                classes[i] = PressureClass.INTAKE;
            }
        }
    }

    private void drains() {
        if (now.running.isEmpty()) {
            return;
        }
        boolean[] start = net.none();
        boolean[] open = net.none();
        for (int i = 0; i < net.size; i++) {
            open[i] = classes[i] == null && toTank[i] && net.quiet[i];
            start[i] = classes[i] == null && toTank[i] && net.drainLike[i];
        }
        boolean[] way = links.downstream(start, open, Links.DRAIN | Links.PASSIVE, 0);
        for (int i = 0; i < net.size; i++) {
            if (way[i]) {
                classes[i] = PressureClass.DRAIN;
            }
        }
    }

    /** A pump that stands still is not tight; a line that nothing closes off holds nothing. */
    private void shutIn() {
        boolean[] vents = net.none();
        for (int i = 0; i < net.size; i++) {
            vents[i] = net.tank[i] && unfed[i];
        }
        for (Pumps.Sides s : now.stopped) {
            for (int v : s.outlets()) {
                vents[v] |= unfed[v] && s.part().component().positions().isEmpty();
            }
        }
        boolean[] open = links.upstream(vents, unfed, Links.DRAIN, 0);
        boolean[] holding = net.none();
        boolean[] rest = net.none();
        for (int i = 0; i < net.size; i++) {
            rest[i] = classes[i] == null && !open[i];
            holding[i] = rest[i] && (net.load[i] || net.sealed[i]);
        }
        boolean[] held = links.downstream(holding, rest, Links.DRAIN, 0);
        boolean[] joined = links.upstream(holding, rest, Links.DRAIN, 0);
        for (int i = 0; i < net.size; i++) {
            if (classes[i] == null) {
                classes[i] = held[i] || joined[i] ? PressureClass.HELD : PressureClass.IDLE;
            }
        }
    }

    /** Pilot lines that are fed; by held oil only where they are joined with a line that holds it. */
    private void pilots() {
        boolean[] outlets = net.none();
        List<Pumps.Sides> all = new ArrayList<>(now.running);
        all.addAll(now.stopped);
        all.forEach(s -> Arrays.stream(s.outlets()).forEach(v -> outlets[v] = true));
        for (int i = 0; i < net.size; i++) {
            boolean line = net.pilotOnly[i] && !outlets[i] && !net.load[i];
            if (line && (fed[i] && classes[i].pressed() || classes[i] == PressureClass.HELD && byHeld(i))) {
                classes[i] = PressureClass.PILOT;
            }
        }
    }

    private boolean byHeld(int volume) {
        for (int k = links.firstIn[volume]; k >= 0; k = links.nextIn[k]) {
            int from = links.from[k];
            if (classes[from] == PressureClass.HELD && !net.pilotOnly[from]) {
                return true;
            }
        }
        return false;
    }
}
