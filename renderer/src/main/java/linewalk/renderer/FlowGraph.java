package linewalk.renderer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.linker.Leg;
import linewalk.renderer.symbol.Symbol;

/** A trace as parts and crossings joined by edges: a part that is passed twice is there once, a tank each time. */
final class FlowGraph {

    static final String IN = "in";
    static final String OUT = "out";

    /** A part, a crossing, or (neither) the open end of a walk that stopped on a line. */
    static final class Stop {
        final int firstLeg;
        final Component part;
        final Leg.Across crossing;
        final List<Symbol.Use> uses = new ArrayList<>();
        final List<Integer> legs = new ArrayList<>();
        Position active;
        Position shift;
        boolean against;
        private boolean wayUnread;

        private Stop(int firstLeg, Component part, Leg.Across crossing) {
            this.firstLeg = firstLeg;
            this.part = part;
            this.crossing = crossing;
        }

        boolean isOpenEnd() {
            return part == null && crossing == null;
        }

        boolean isWayUnread() {
            return wayUnread;
        }

        private void use(String key, String name, boolean in) {
            if (uses.stream().noneMatch(u -> u.key().equals(key))) {
                uses.add(new Symbol.Use(key, name, in));
            }
        }
    }

    /** Joins two stops; {@code along} is null where they touch without a line, {@code leg} is then -1. */
    record Edge(Stop from, String fromKey, Stop to, String toKey, Leg.Along along, int leg) {}

    final List<Stop> stops = new ArrayList<>();
    final List<Edge> edges = new ArrayList<>();
    private final Map<String, Stop> byPart = new LinkedHashMap<>();
    private final PrintJob job;
    private Stop last;
    private String lastKey;
    private Leg.Along along;
    private int alongLeg = -1;

    FlowGraph(PrintJob job) {
        this.job = job;
        List<Leg> legs = job.trace().legs();
        for (int i = 0; i < legs.size(); i++) {
            if (legs.get(i) instanceof Leg.Along a) {
                if (last == null) {
                    arrive(openEnd(i), IN, null);
                }
                along = a;
                alongLeg = i;
            } else {
                take(legs.get(i), i, i == legs.size() - 1);
            }
        }
        if (along != null) {
            arrive(openEnd(legs.size()), IN, null);
        }
    }

    private void take(Leg leg, int i, boolean ends) {
        arrive(stop(leg, i), inKey(leg), inName(leg));
        lastKey = outKey(leg);
        if (!ends) {
            last.use(lastKey, outName(leg), false);
        }
    }

    private void arrive(Stop stop, String inKey, String inName) {
        if (last != null) {
            stop.use(inKey, inName, true);
            edges.add(new Edge(last, lastKey, stop, inKey, along, alongLeg));
        }
        last = stop;
        along = null;
        alongLeg = -1;
    }

    private Stop openEnd(int leg) {
        Stop end = new Stop(leg, null, null);
        stops.add(end);
        if (leg == 0) {
            end.use(OUT, null, false);
            lastKey = OUT;
        }
        return end;
    }

    private Stop stop(Leg leg, int i) {
        Stop stop;
        if (leg instanceof Leg.Through t) {
            Component c = t.component();
            stop = c.kind() == Kind.TANK ? null : byPart.get(c.id());
            if (stop == null) {
                stop = new Stop(i, c, null);
                byPart.put(c.id(), stop);
                stops.add(stop);
            }
            note(stop, t);
        } else {
            stop = new Stop(i, null, (Leg.Across) leg);
            stops.add(stop);
        }
        stop.legs.add(i);
        return stop;
    }

    private void note(Stop stop, Leg.Through t) {
        if (t.shift() != null) {
            stop.shift = t.shift();
            stop.active = t.shift();
        } else if (stop.active == null) {
            stop.active = activeIn(t.component(), t.passage());
        }
        stop.wayUnread |= Words.isWayUnread(t);
        if (t.passage() != null && t.passage().opens() == Passage.Opens.PILOT) {
            stop.against = true;
        }
    }

    /** The position that the step brings about and that holds the passage; else any that holds it; else rest. */
    private Position activeIn(Component c, Passage passage) {
        if (passage == null) {
            return c.rest().orElse(null);
        }
        List<Position> holding = c.positions().stream()
                .filter(p -> p.passages().contains(passage))
                .toList();
        if (job.step() != null) {
            for (Position p : holding) {
                if (p.by().stream().anyMatch(job.step().energised()::contains)) {
                    return p;
                }
            }
        }
        return holding.stream()
                .filter(Position::isRest)
                .findFirst()
                .orElse(holding.isEmpty() ? c.rest().orElse(null) : holding.get(0));
    }

    private static String inKey(Leg leg) {
        return leg instanceof Leg.Through t && t.in() != null ? t.in().id() : IN;
    }

    private static String outKey(Leg leg) {
        return leg instanceof Leg.Through t && t.out() != null ? t.out().id() : OUT;
    }

    private static String inName(Leg leg) {
        return leg instanceof Leg.Through t ? name(t.in()) : null;
    }

    private static String outName(Leg leg) {
        return leg instanceof Leg.Through t ? name(t.out()) : null;
    }

    private static String name(Port port) {
        return port == null ? null : port.name();
    }
}
