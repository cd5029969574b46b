package linewalk.importer.line;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.importer.symbol.Body;

/**
 * A figure without a designation beside a named one, joined to it at both ends, is part of it: a throttle and its check.
 * The part's ports are where the two ways meet.
 */
public final class Bypasses {

    /** How far apart the two may stand, in sizes of the larger. */
    private static final double APART = 2;

    /** Where two ways out of two figures meet a third. */
    private record Fork(Net net, Node meeting, Node nameless, Node named) {}

    private final Set<Body> named;
    private final List<Net> nets;
    private final Map<Body, List<Net>> at = new LinkedHashMap<>();

    private Bypasses(List<Net> nets, Set<Body> named) {
        this.nets = new ArrayList<>(nets);
        this.named = named;
        nets.forEach(n -> n.contacts().forEach(c -> at.computeIfAbsent(c.body(), b -> new ArrayList<>())
                .add(n)));
    }

    /**
     * Nets without the ways between the two figures.
     *
     * @param partOf gets the nameless figures with the named ones
     */
    public static List<Net> merge(List<Net> nets, Set<Body> named, Map<Body, Body> partOf) {
        Bypasses b = new Bypasses(nets, named);
        b.at.keySet().stream().filter(named::contains).forEach(body -> b.beside(body, partOf));
        return b.nets;
    }

    private void beside(Body body, Map<Body, Body> partOf) {
        Set<Body> others = new LinkedHashSet<>();
        at.get(body).forEach(n -> n.contacts().forEach(c -> others.add(c.body())));
        others.stream()
                .filter(o -> !named.contains(o) && !o.reservoir() && !partOf.containsKey(o) && isNear(body, o))
                .forEach(o -> {
                    List<Fork> forks = forks(body, o);
                    List<Net> more = Stream.concat(at.get(o).stream(), at.get(body).stream())
                            .filter(n -> forks.stream().noneMatch(f -> f.net() == n))
                            .toList();
                    Set<Body> own = Set.of(body, o);
                    if (forks.size() == 2
                            && more.stream().allMatch(n -> hanging(n, own).isPresent())) {
                        more.forEach(n -> partOf.put(hanging(n, own).orElseThrow(), body));
                        nets.removeAll(more);
                        forks.forEach(f -> close(f, body));
                        partOf.put(o, body);
                    }
                });
    }

    /** The nameless figure at the end of a net between two, which only these are joined to: a filter's indicator. */
    private Optional<Body> hanging(Net n, Set<Body> own) {
        return n.contacts().size() != 2 || n.nodes().size() != 2
                ? Optional.empty()
                : n.contacts().stream()
                        .map(Node::body)
                        .filter(b -> !own.contains(b) && !named.contains(b) && !b.reservoir())
                        .filter(b -> at.get(b).stream()
                                .allMatch(m -> m.contacts().size() == m.nodes().size()
                                        && m.contacts().stream()
                                                .allMatch(c -> c.body() == b || own.contains(c.body()))))
                        .findFirst();
    }

    private static boolean isNear(Body a, Body b) {
        Box p = a.core();
        Box q = b.core();
        double size = Math.max(Math.max(p.widthPt(), p.heightPt()), Math.max(q.widthPt(), q.heightPt()));
        return p.distancePt(q) < APART * size;
    }

    private List<Fork> forks(Body body, Body other) {
        List<Fork> forks = new ArrayList<>();
        for (Net n : at.get(body)) {
            fork(n, body, other).ifPresent(forks::add);
        }
        return forks;
    }

    private static Optional<Fork> fork(Net n, Body body, Body other) {
        List<Node> own = n.contacts().stream().filter(c -> c.body() == body).toList();
        List<Node> its = n.contacts().stream().filter(c -> c.body() == other).toList();
        if (own.size() != 1 || its.size() != 1) {
            return Optional.empty();
        }
        Node a = end(own.get(0));
        Node b = end(its.get(0));
        return a == b && a.runs().size() == 3 && a.body() == null
                ? Optional.of(new Fork(n, a, its.get(0), own.get(0)))
                : Optional.empty();
    }

    /** Where the line from a contact first meets anything. */
    private static Node end(Node contact) {
        Node at = contact;
        for (Run r : Net.leg(contact)) {
            at = r.other(at);
        }
        return at;
    }

    private void close(Fork f, Body body) {
        Set<Run> ways = new HashSet<>(Net.leg(f.nameless));
        ways.addAll(Net.leg(f.named));
        Net now = nets.stream()
                .filter(n -> n.nodes().contains(f.meeting))
                .findFirst()
                .orElseThrow();
        ways.forEach(r -> {
            r.from().runs().remove(r);
            r.to().runs().remove(r);
        });
        f.meeting.body(body);
        nets.set(
                nets.indexOf(now),
                new Net(
                        now.nodes().stream().filter(x -> !x.runs().isEmpty()).toList(),
                        now.runs().stream().filter(r -> !ways.contains(r)).toList(),
                        now.confidence(),
                        now.doubts()));
    }
}
