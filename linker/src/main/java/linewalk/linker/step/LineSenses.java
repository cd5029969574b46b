package linewalk.linker.step;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;
import org.jgrapht.alg.util.UnionFind;

/**
 * From what oil does at the ports to what it does at the ends of each line: at an end that leads on over other lines, it
 * does what it does at all ports beyond; where these do not tell, what the other ends leave it to do.
 */
final class LineSenses {

    private final Net net;
    private final Currents currents;
    /** Ends that are one place: a port on all its sheets, a reference and its mates. */
    private final UnionFind<String> places;

    private final Map<String, Sense> atPlaces = new HashMap<>();
    private final Map<String, List<Integer>> linesAt = new HashMap<>();

    private LineSenses(DrawingSet set, Net net, Currents currents) {
        this.net = net;
        this.currents = currents;
        places = new UnionFind<>(names(set, net));
        mates(set);
        twins();
        for (Part p : net.parts) {
            for (int i = 0; i < p.volumes().length; i++) {
                atPlaces.merge(places.find(p.component().ports().get(i).id()), at(p, i), Sense::and);
            }
        }
        for (int i = 0; i < net.lines.size(); i++) {
            for (End end : net.isCut(i) ? List.<End>of() : net.lines.get(i).ends()) {
                if (!(end instanceof End.Open)) {
                    linesAt.computeIfAbsent(place(end), k -> new ArrayList<>()).add(i);
                }
            }
        }
    }

    static LineFlows of(DrawingSet set, Net net, Currents currents) {
        LineSenses senses = new LineSenses(set, net, currents);
        Map<String, List<Sense>> found = new HashMap<>();
        for (int i = 0; i < net.lines.size(); i++) {
            found.put(net.lines.get(i).id(), senses.atEnds(i));
        }
        return new LineFlows(found);
    }

    private static Set<String> names(DrawingSet set, Net net) {
        Set<String> names = new LinkedHashSet<>();
        set.references().forEach(r -> names.add(reference(r.id())));
        for (Part p : net.parts) {
            p.component().ports().forEach(o -> names.add(o.id()));
            p.component().ports().forEach(o -> names.add(Volumes.twin(p.component(), o)));
        }
        net.lines.forEach(l -> l.ends().forEach(e -> names.add(name(e))));
        names.remove(null);
        return names;
    }

    private void mates(DrawingSet set) {
        Map<String, Integer> volumes = new HashMap<>();
        for (int i = 0; i < net.lines.size(); i++) {
            List<End> ends = net.lines.get(i).ends();
            for (int e = 0; e < ends.size(); e++) {
                if (ends.get(e) instanceof End.AtReference r) {
                    volumes.put(r.reference(), net.volumes(i)[e]);
                }
            }
        }
        for (Reference r : set.references()) {
            List<String> lined = r.mates().stream().filter(volumes::containsKey).toList();
            lined.stream()
                    .filter(m -> volumes.get(m).equals(volumes.get(r.id())))
                    .forEach(m -> places.union(reference(r.id()), reference(m)));
            if (lined.isEmpty()) {
                atPlaces.put(places.find(reference(r.id())), currents.atLooseEnd());
            }
        }
    }

    private void twins() {
        for (Part p : net.parts) {
            for (Port port : p.component().ports()) {
                String twin = Volumes.twin(p.component(), port);
                if (twin != null) {
                    places.union(twin, port.id());
                }
            }
        }
    }

    /** Of two ports at one volume, each may be the one. */
    private Sense at(Part p, int port) {
        long alike = IntStream.range(0, p.volumes().length)
                .filter(k -> p.lined()[k] && p.volumes()[k] == p.volumes()[port])
                .count();
        Sense sense = currents.at(p, p.volumes()[port]);
        return alike > 1 && sense != Sense.STILL ? Sense.UNKNOWN : sense;
    }

    private static String reference(String id) {
        return "ref " + id;
    }

    /** Null for an open end. */
    private static String name(End end) {
        if (end instanceof End.AtReference r) {
            return reference(r.reference());
        }
        return end instanceof End.AtPort p ? p.port() : null;
    }

    private String place(End end) {
        return places.find(name(end));
    }

    private List<Sense> atEnds(int line) {
        List<End> ends = net.lines.get(line).ends();
        if (net.isCut(line)) {
            return ends.stream().map(e -> Sense.UNKNOWN).toList();
        }
        List<Sense> own = ends.stream().map(e -> beyond(line, e)).toList();
        List<Sense> found = new ArrayList<>();
        for (int e = 0; e < own.size(); e++) {
            found.add(own.get(e) == Sense.UNKNOWN ? left(own, e) : own.get(e));
        }
        boolean balanced = found.contains(Sense.IN) == found.contains(Sense.OUT) || found.contains(Sense.UNKNOWN);
        return balanced ? found : ends.stream().map(e -> Sense.UNKNOWN).toList();
    }

    /** What the other ends leave for one of which nothing is known. */
    private static Sense left(List<Sense> own, int end) {
        Sense others = Sense.STILL;
        for (int e = 0; e < own.size(); e++) {
            others = e == end ? others : others.and(own.get(e));
        }
        return others.opposite();
    }

    /** Over all that an end leads to without its line; unknown where that comes back to the line. */
    private Sense beyond(int line, End end) {
        if (end instanceof End.Open) {
            return currents.atLooseEnd();
        }
        Set<String> seen = new HashSet<>(Set.of(place(end)));
        Set<Integer> passed = new HashSet<>(Set.of(line));
        Deque<String> open = new ArrayDeque<>(seen);
        Sense sense = Sense.STILL;
        while (!open.isEmpty()) {
            String at = open.removeFirst();
            sense = sense.and(atPlaces.getOrDefault(at, Sense.STILL));
            for (int next : linesAt.getOrDefault(at, List.of())) {
                for (End e : passed.add(next) ? net.lines.get(next).ends() : List.<End>of()) {
                    if (e instanceof End.Open) {
                        sense = sense.and(currents.atLooseEnd());
                    } else if (seen.add(place(e))) {
                        open.addLast(place(e));
                    }
                }
            }
        }
        boolean round = net.lines.get(line).ends().stream()
                .anyMatch(e -> !(e instanceof End.Open) && !place(e).equals(place(end)) && seen.contains(place(e)));
        return round ? Sense.UNKNOWN : sense;
    }
}
