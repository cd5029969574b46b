package linewalk.importer.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.symbol.Body;

/**
 * A figure without a designation beside a named one, joined to it at both ends, is part of it: a throttle and its check.
 * The part's ports are where the two ways meet.
 */
public final class Bypasses {

    /** How far apart the two may stand, in sizes of the larger. */
    private static final double APART = 2;

    /** Sides of a square differ by less, as a share. */
    private static final double ALIKE = 0.1;

    /** From a figure to where its line first meets another. */
    private record Way(Node to, Set<Run> runs) {}

    /**
     * Where two ways out of two figures meet a third.
     *
     * @param ways both
     */
    private record Fork(Net net, Node meeting, Set<Run> ways) {}

    private final Set<Body> named;
    private final Set<Body> numbered;
    private final List<Net> nets;
    private final Map<Body, List<Net>> at = new LinkedHashMap<>();

    private Bypasses(List<Net> nets, Set<Body> named, Set<Body> numbered) {
        this.nets = new ArrayList<>(nets);
        this.named = named;
        this.numbered = numbered;
        index();
    }

    private void index() {
        at.clear();
        nets.forEach(n -> n.contacts().forEach(c -> at.computeIfAbsent(c.body(), b -> new ArrayList<>())
                .add(n)));
    }

    /**
     * The name beside a filter, a cooler or a valve may stand nearer to its indicator or its bypass: what lies side by side
     * with a nameless diamond or square, between the same two places of the line, gives its name to that.
     *
     * @param named is changed
     * @param numbered those of the named that have nothing but an item number
     */
    public static <N> void nameMain(List<Net> nets, Map<Body, N> named, Set<Body> numbered) {
        Bypasses b = new Bypasses(nets, named.keySet(), numbered);
        for (Body body : List.copyOf(named.keySet())) {
            if (!isMain(body) && b.at.getOrDefault(body, List.of()).size() == 2) {
                b.others(body)
                        .filter(o -> isMain(o) && b.forks(body, o).size() == 2)
                        .findFirst()
                        .ifPresent(o -> named.put(o, named.remove(body)));
            }
        }
    }

    private static boolean isMain(Body o) {
        return isDiamond(o) || isSquare(o);
    }

    /** A square on its corner (ISO 1219-1: conditioners of the oil). */
    private static boolean isDiamond(Body o) {
        return o.outlines().stream()
                .filter(x -> x.stroke().points().size() == 4)
                .anyMatch(x -> x.stroke().points().stream()
                        .allMatch(p -> Math.abs(p.xPt() - x.box().center().xPt())
                                        < ALIKE * x.box().widthPt()
                                || Math.abs(p.yPt() - x.box().center().yPt())
                                        < ALIKE * x.box().heightPt()));
    }

    /** Nameless figures that a figure's lines lead to, near it; an item number is no name beside a designation. */
    private Stream<Body> others(Body body) {
        Set<Body> others = new LinkedHashSet<>();
        at.getOrDefault(body, List.of()).forEach(n -> n.contacts().forEach(c -> others.add(c.body())));
        return others.stream().filter(o -> isNameless(o, body) && !o.reservoir() && isNear(body, o));
    }

    private boolean isNameless(Body o, Body beside) {
        return !named.contains(o) || numbered.contains(o) && !numbered.contains(beside);
    }

    /**
     * Nets without the ways between the two figures.
     *
     * @param numbered those of the named that have nothing but an item number
     * @param partOf gets the nameless figures with the named ones
     */
    public static List<Net> merge(List<Net> nets, Set<Body> named, Set<Body> numbered, Map<Body, Body> partOf) {
        Bypasses b = new Bypasses(nets, named, numbered);
        for (Body body : b.at.keySet().stream().filter(named::contains).toList()) {
            while (b.mergeOne(body, partOf)) {
                b.index();
            }
        }
        return b.nets;
    }

    /** One more way around a figure becomes part of it. */
    private boolean mergeOne(Body body, Map<Body, Body> partOf) {
        for (Body o : others(body).filter(o -> !partOf.containsKey(o)).toList()) {
            List<Fork> forks = forks(body, o);
            Set<Body> own = Set.of(body, o);
            List<Net> hanging = Stream.concat(at.get(o).stream(), at.get(body).stream())
                    .filter(n -> forks.stream().noneMatch(f -> f.net() == n))
                    .filter(n -> hanging(n, own).isPresent())
                    .toList();
            boolean isPart = isSquare(o)
                    || at.get(o).stream()
                            .allMatch(n -> forks.stream().anyMatch(f -> f.net() == n) || hanging.contains(n));
            if (forks.size() == 2 && isPart) {
                hanging.forEach(n -> partOf.put(hanging(n, own).orElseThrow(), body));
                nets.removeAll(hanging);
                forks.forEach(f -> close(f, body));
                partOf.put(o, body);
                return true;
            }
        }
        return false;
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

    /** A valve of one square: its drain or pilot line may go on elsewhere. */
    private static boolean isSquare(Body o) {
        return o.outlines().stream()
                        .anyMatch(
                                x -> x.stroke().points().size() == 4 && x.box().equals(o.core()))
                && Math.abs(o.core().widthPt() - o.core().heightPt())
                        < ALIKE * o.core().widthPt();
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
        if (own.isEmpty() || own.size() > 2 || its.isEmpty() || its.size() > 2) {
            return Optional.empty();
        }
        Way a = onward(own);
        Way b = onward(its);
        boolean merged = a != null && a.to.body() == body;
        if (a == null || b == null || a.to != b.to || !merged && (a.to.runs().size() < 3 || a.to.body() != null)) {
            return Optional.empty();
        }
        a.runs.addAll(b.runs);
        return Optional.of(new Fork(n, a.to, a.runs));
    }

    private static Way onward(List<Node> contacts) {
        return contacts.size() == 1 ? way(contacts.get(0)) : joined(contacts.get(0), contacts.get(1));
    }

    /** To where the line from a contact first meets anything. */
    private static Way way(Node contact) {
        return way(contact, Net.leg(contact));
    }

    private static Way way(Node from, List<Run> leg) {
        Node at = from;
        for (Run r : leg) {
            at = r.other(at);
        }
        return new Way(at, new LinkedHashSet<>(leg));
    }

    /** Of two contacts that come together at once, such as that of a valve's own pilot line; null where they do not. */
    private static Way joined(Node one, Node other) {
        Way a = way(one);
        Way b = way(other);
        if (a.to != b.to || a.to.runs().size() != 3 || a.to.body() != null) {
            return null;
        }
        a.runs.addAll(b.runs);
        Run onward = a.to.runs().stream()
                .filter(r -> !a.runs.contains(r))
                .findFirst()
                .orElseThrow();
        Way all = way(a.to, Net.leg(a.to, onward));
        all.runs.addAll(a.runs);
        return all;
    }

    private void close(Fork f, Body body) {
        Net now = nets.stream()
                .filter(n -> n.nodes().contains(f.meeting))
                .findFirst()
                .orElseThrow();
        f.ways.forEach(r -> {
            r.from().runs().remove(r);
            r.to().runs().remove(r);
        });
        f.meeting.body(body);
        // what the four ends that met there do is told
        List<Point> doubts =
                now.doubts().stream().filter(d -> !d.equals(f.meeting.place())).toList();
        boolean settled = doubts.isEmpty() && !now.doubts().isEmpty();
        nets.set(
                nets.indexOf(now),
                new Net(
                        now.nodes().stream().filter(x -> !x.runs().isEmpty()).toList(),
                        now.runs().stream().filter(r -> !f.ways.contains(r)).toList(),
                        settled ? Net.SURE : now.confidence(),
                        doubts));
    }
}
