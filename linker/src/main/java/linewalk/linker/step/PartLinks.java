package linewalk.linker.step;

import java.util.Arrays;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/** What each part joins in its position, as links between volumes. */
final class PartLinks {

    private final Links links;
    private final Facts facts;
    private final int[] checkInlet;
    private final Guess guess;
    private final Positions.Ranks pilots;

    PartLinks(Links links, Facts facts, int[] checkInlet, Guess guess, Positions.Ranks pilots) {
        this.links = links;
        this.facts = facts;
        this.checkInlet = checkInlet;
        this.guess = guess;
        this.pilots = pilots;
    }

    /** Pipes, checks and shut-offs: what stands between the rest and the tank. */
    static boolean passive(Part p) {
        return Kinds.PIPES.contains(p.kind())
                || p.kind() == Kind.CHECK_VALVE
                || p.kind() == Kind.SHUT_OFF_VALVE && p.component().positions().isEmpty();
    }

    void passive(Part p, Position now) {
        int[] ends = p.through();
        boolean pipe = Kinds.PIPES.contains(p.kind());
        int valve = p.kind() == Kind.SHUT_OFF_VALVE ? Links.SHUT_OFF : 0;
        int flag = Links.BOTH | Links.PASSIVE | (pipe ? Links.PIPE : valve);
        if (!p.component().positions().isEmpty()) {
            known(p, now, null, flag & ~Links.BOTH);
        } else if (p.kind() == Kind.CHECK_VALVE && ends.length == 2) {
            check(p, ends, flag);
        } else if (ends.length == 2) {
            if (p.kind() != Kind.SHUT_OFF_VALVE || !facts.shut(p.component())) {
                links.both(ends[0], ends[1], flag);
            }
        } else if (ends.length > 2) {
            unknown(ends, null);
        }
    }

    private void check(Part p, int[] ends, int flag) {
        int in = checkInlet[p.index()];
        if (in >= 0) {
            links.add(in, in == ends[0] ? ends[1] : ends[0], flag);
        } else if (guess != Guess.SHUT) {
            links.both(ends[0], ends[1], flag);
        }
    }

    /** @param outlet volumes that lead to tank */
    void active(Part p, Position now, boolean[] outlet) {
        if (p.kind() == Kind.RELIEF_VALVE || p.kind() == Kind.PUMP || p.kind().isActuator()) {
            return;
        }
        if (Kinds.ENDS.contains(p.kind())) {
            return;
        }
        if (p.component().positions().isEmpty()) {
            untold(p, outlet);
        } else if (now == null) {
            unknown(p.through(), outlet);
        } else {
            known(p, now, outlet, 0);
            if (guess != Guess.SHUT && Pilots.unread(p)) {
                p.component().positions().stream()
                        .filter(x -> x.how() == Position.How.PILOT)
                        .forEach(x -> known(p, x, outlet, 0));
            }
        }
    }

    private void known(Part p, Position now, boolean[] outlet, int more) {
        if (now == null) {
            unknown(p.through(), outlet);
            return;
        }
        int[] vent = outlet == null ? null : Vents.of(p, now, outlet);
        for (Passage x : now.passages()) {
            int u = p.at(x.from());
            int v = p.at(x.to());
            if (u < 0 || v < 0 || shut(p, x)) {
                continue;
            }
            int t = vent == null || x.throttled() ? -1 : vent[port(p, x.from())];
            if (t >= 0 && !outlet[u] && !outlet[v]) {
                links.both(u, t, Links.BOTH | more);
                links.both(v, t, Links.BOTH | more);
            } else {
                passage(p, x, u, v, more);
            }
        }
    }

    private static int port(Part p, String id) {
        List<Port> ports = p.component().ports();
        for (int i = 0; i < ports.size(); i++) {
            if (ports.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    private boolean shut(Part p, Passage x) {
        if (x.opens() == Passage.Opens.PRESSURE) {
            return p.kind() != Kind.SEQUENCE_VALVE && p.kind() != Kind.CHECK_VALVE;
        } else if (x.opens() == Passage.Opens.PILOT) {
            boolean fed = Pilots.unnamed(p).stream().anyMatch(v -> pilots.at(v) > 0);
            return Kinds.BY_PRESSURE.contains(p.kind()) || !fed;
        }
        return false;
    }

    private void passage(Part p, Passage x, int u, int v, int more) {
        int flag = more | (x.throttled() ? Links.THROTTLE : 0);
        if (p.kind() == Kind.INTENSIFIER) {
            links.add(u, v, Links.FEED | Links.INTENSIFY | flag);
        } else if (p.kind() == Kind.SHUTTLE_VALVE) {
            links.add(u, v, Links.BOTH | flag);
            links.add(v, u, Links.DRAIN | flag);
        } else {
            links.add(u, v, Links.BOTH | flag | onward(p, u, v));
            if (!x.oneWay()) {
                links.add(v, u, Links.BOTH | flag | onward(p, v, u));
            }
        }
    }

    private static int onward(Part p, int from, int to) {
        if (p.kind() == Kind.REDUCING_VALVE) {
            int outlet = p.named("A");
            return outlet < 0 || outlet == to ? Links.REDUCE : 0;
        } else if (p.kind() == Kind.COUNTERBALANCE_VALVE) {
            return loadSide(p) == from ? Links.LOADED : 0;
        }
        return 0;
    }

    /** Port C, else where the valve lets oil in to the load without being opened. */
    private static int loadSide(Part p) {
        int named = p.named("C");
        if (named >= 0) {
            return named;
        }
        return p.component().rest().stream()
                .flatMap(r -> r.passages().stream())
                .filter(Passage::oneWay)
                .map(x -> p.at(x.to()))
                .findFirst()
                .orElse(-1);
    }

    /** Parts of untold passages that their kind and port names tell, and those that nothing tells. */
    private void untold(Part p, boolean[] outlet) {
        switch (p.kind()) {
            case UNLOADING_VALVE -> {}
            case SEQUENCE_VALVE -> named(p, "P", "A", Links.BOTH, guess == Guess.SHUT ? 0 : Links.BOTH, outlet);
            case REDUCING_VALVE -> named(p, "P", "A", Links.BOTH | Links.REDUCE, Links.BOTH, outlet);
            case PILOT_CHECK_VALVE -> named(p, "A", "B", Links.BOTH, opened(p) ? Links.BOTH : 0, outlet);
            case COUNTERBALANCE_VALVE ->
                named(p, "V", "C", Links.BOTH, opened(p) ? Links.BOTH | Links.LOADED : 0, outlet);
            case INTENSIFIER -> named(p, "P", "H", Links.FEED | Links.INTENSIFY, 0, outlet);
            case ORIFICE -> throttle(p, outlet, Links.THROTTLE);
            case FLOW_CONTROL -> throttle(p, outlet, guess == Guess.SHUT ? Links.THROTTLE : 0);
            default -> unknown(p.through(), outlet);
        }
    }

    private void throttle(Part p, boolean[] outlet, int flag) {
        int[] ends = p.through();
        if (ends.length == 2) {
            links.both(ends[0], ends[1], Links.BOTH | flag);
        } else {
            unknown(ends, outlet);
        }
    }

    private boolean opened(Part p) {
        List<Integer> by = Pilots.unnamed(p);
        return by.isEmpty() ? guess != Guess.SHUT : by.stream().anyMatch(v -> pilots.at(v) > 0);
    }

    private void named(Part p, String from, String to, int forth, int back, boolean[] outlet) {
        int u = p.named(from);
        int v = p.named(to);
        if (u < 0 || v < 0) {
            unknown(p.through(), outlet);
            return;
        }
        links.add(u, v, forth);
        if (back != 0) {
            links.add(v, u, back);
        }
    }

    /** All ports joined, towards the tank or away from it. */
    private void unknown(int[] ends, boolean[] outlet) {
        if (guess == Guess.SHUT) {
            return;
        }
        int[] joined = Arrays.stream(ends)
                .filter(v -> guess == Guess.JOINED || outlet == null || !outlet[v])
                .toArray();
        int hub = Arrays.stream(joined)
                .filter(v -> outlet != null && outlet[v])
                .findFirst()
                .orElse(joined.length == 0 ? -1 : joined[0]);
        for (int v : joined) {
            links.both(hub, v, Links.BOTH);
        }
    }
}
