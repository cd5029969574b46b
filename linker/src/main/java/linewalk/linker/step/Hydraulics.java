package linewalk.linker.step;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Kind;
import linewalk.drawing.Position;

/** The oil in one setting of all parts: what leads to tank, and what stands under pressure. */
final class Hydraulics {

    final Net net;
    final Links links;
    /** Volumes that lead to tank over passive parts alone. */
    final boolean[] outlet;
    /** Pumps that run, and those that do not, as they are set now. */
    final List<Pumps.Sides> running = new ArrayList<>();

    final List<Pumps.Sides> stopped = new ArrayList<>();
    final Flood flood;
    private final Pumps pumps;
    private final Facts facts;
    private final Guess guess;

    Hydraulics(Net net, Pumps pumps, Facts facts, Guess guess, Position[] positions, Positions.Ranks pilots) {
        this.net = net;
        this.pumps = pumps;
        this.facts = facts;
        this.guess = guess;
        this.links = new Links(net.size);
        sort(positions);
        PartLinks parts = new PartLinks(links, facts, pumps.checkInlet, guess, pilots);
        for (Part p : net.parts) {
            if (PartLinks.passive(p)) {
                parts.passive(p, positions[p.index()]);
                links.belongTo(p.index());
            }
        }
        outlet = outlet();
        for (Part p : net.parts) {
            if (!PartLinks.passive(p)) {
                parts.active(p, positions[p.index()], outlet);
                links.belongTo(p.index());
            }
        }
        for (int i = 0; i < net.size && guess == Guess.JOINED; i++) {
            if (net.loose[i]) {
                links.both(i, net.nowhere(), Links.BOTH);
            }
        }
        flood = flood(true, true);
    }

    private void sort(Position[] positions) {
        for (Pumps.Sides s : pumps.drawn) {
            Pumps.Sides now = Pumps.in(s, positions[s.part().index()]);
            (facts.runs(s.part().component()) ? running : stopped).add(now);
        }
    }

    /**
     * Backwards from the tank, but never into what belongs to a pump's pressure side or a load. Where nothing but
     * passive parts lies between a pump and the tank, only the line that ends in the tank leads there.
     */
    private boolean[] outlet() {
        boolean[] plain = net.none();
        boolean[] inside = net.none();
        boolean[] sources = net.none();
        for (int i = 0; i < net.size; i++) {
            plain[i] = !net.load[i] && !pumps.outlet[i];
            inside[i] = !net.tank[i];
        }
        for (Pumps.Sides s : running) {
            for (int o : s.outlets()) {
                sources[o] = true;
            }
        }
        accumulators().forEach(a -> sources[a] = true);
        boolean[] found = links.upstream(net.tank, plain, Links.DRAIN | Links.PASSIVE, 0);
        boolean[] before = links.downstream(sources, inside, Links.FEED | Links.PASSIVE, Links.SHUT_OFF);
        for (int i = 0; i < net.size; i++) {
            found[i] = net.tank[i] || found[i] && !before[i];
        }
        return found;
    }

    List<Integer> accumulators() {
        List<Integer> found = new ArrayList<>();
        for (Part p : net.parts) {
            if (p.kind() == Kind.ACCUMULATOR) {
                found.addAll(p.workingVolumes());
            }
        }
        return found;
    }

    /** A pump that draws from a line under pressure makes the greater pressure. */
    Flood flood(boolean withAccumulators, boolean overThrottles) {
        Flood first = sources(new Flood(links, outlet, overThrottles), withAccumulators, null)
                .spread();
        boolean boosted = running.stream().anyMatch(s -> boosted(s, first));
        return boosted
                ? sources(new Flood(links, outlet, overThrottles), withAccumulators, first)
                        .spread()
                : first;
    }

    Positions.Ranks ranks() {
        return v -> flood.rank[v];
    }

    /** What one pump alone feeds. */
    Flood from(String tag) {
        Flood alone = new Flood(links, outlet, true);
        for (Pumps.Sides s : running) {
            if (Words.plain(s.part().component().tag()).equals(Words.plain(tag)) && !s.guessed()) {
                for (int o : s.outlets()) {
                    alone.source(o, 1);
                }
            }
        }
        return alone.spread();
    }

    private static boolean boosted(Pumps.Sides s, Flood first) {
        for (int v : s.suctions()) {
            if (first.fed(v)) {
                return true;
            }
        }
        return false;
    }

    /** Its sides are known, or taken on a guess. */
    boolean counts(Pumps.Sides s) {
        return !s.guessed() || guess != Guess.SHUT;
    }

    boolean guesses() {
        return guess != Guess.SHUT;
    }

    /** Whether oil may come from a volume that leads off to nowhere known. */
    boolean pressed(int volume) {
        return guess == Guess.PRESSED && net.loose[volume];
    }

    private Flood sources(Flood flood, boolean withAccumulators, Flood first) {
        for (Pumps.Sides s : running) {
            if (counts(s)) {
                int level = first != null && boosted(s, first) ? 2 : 1;
                for (int o : s.outlets()) {
                    flood.source(o, level);
                }
            }
        }
        if (withAccumulators) {
            accumulators().forEach(a -> flood.source(a, 1));
        }
        for (int i = 0; i < net.size; i++) {
            if (pressed(i)) {
                flood.source(i, 1);
            }
        }
        return flood;
    }
}
