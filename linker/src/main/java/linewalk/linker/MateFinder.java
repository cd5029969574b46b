package linewalk.linker;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds the mates of all references, in this order: pairs tied by hand; names and letters that name each other's
 * sheet; zones by one matching over the whole set; last, further references that share the name of one already mated.
 */
final class MateFinder {

    private final RefIndex index;
    private final MateTags tags;
    private final Mates mates = new Mates();
    private final Map<Ref, List<Slot>> slots = new HashMap<>();

    private MateFinder(RefIndex index, MateTags tags) {
        this.index = index;
        this.tags = tags;
        for (Ref r : index.refs) {
            List<Slot> own = new ArrayList<>();
            for (int i = 0; i < r.targets().size(); i++) {
                own.add(new Slot(r, i));
            }
            slots.put(r, own);
        }
    }

    static Mates find(RefIndex index, MateTags tags) {
        MateFinder finder = new MateFinder(index, tags);
        finder.tied();
        finder.names();
        finder.zones();
        finder.shared();
        return finder.mates;
    }

    private void tied() {
        Map<String, Ref> byId = index.refs.stream().collect(Collectors.toMap(Ref::id, r -> r));
        for (MateTags.Pair pair : tags.tied()) {
            Slot a = slotFor(byId.get(pair.a()), byId.get(pair.b()));
            Slot b = slotFor(byId.get(pair.b()), byId.get(pair.a()));
            mates.add(new Pairing(a, b, Facts.of(a, b, index), 1));
        }
    }

    /** The slot that fits the other end best; a tag may tie two that do not name each other. */
    private Slot slotFor(Ref from, Ref to) {
        return slots.get(from).stream()
                .min(Comparator.comparing((Slot s) -> mates.answered(s)).thenComparing(s -> Facts.way(s, to, index)))
                .orElse(new Slot(from, 0));
    }

    /** All that share a name and name each other's sheet belong together: pairs, chains, cliques. */
    private void names() {
        for (Ref r : index.refs) {
            for (Slot a : slots.get(r)) {
                if (a.byName()) {
                    index.labelled(a.sheetKey(), r.labelKey()).forEach(other -> name(a, other));
                }
            }
        }
    }

    private void name(Slot a, Ref other) {
        if (a.ref().id().compareTo(other.id()) >= 0 || tags.untied(a.ref(), other) || mates.mated(a.ref(), other)) {
            return;
        }
        slots.get(other).stream()
                .filter(b -> b.byName() && b.sheetKey().equals(a.ref().sheetKey()))
                .findFirst()
                .ifPresent(
                        b -> mates.add(new Pairing(a, b, Facts.of(a, b, index), MateConfidence.byName(a, b, index))));
    }

    private void zones() {
        List<Slot> open = slots.values().stream()
                .flatMap(Collection::stream)
                .filter(s -> !mates.answered(s))
                .sorted()
                .toList();
        List<Pairing> pairs = new PairFinder(index, tags::untied).pairs(open);
        Map<Slot, List<Pairing>> rivals = new HashMap<>();
        for (Pairing p : pairs) {
            rivals.computeIfAbsent(p.a(), k -> new ArrayList<>()).add(p);
            rivals.computeIfAbsent(p.b(), k -> new ArrayList<>()).add(p);
        }
        List<Pairing> chosen = new ArrayList<>(Matching.best(pairs));
        chosen.sort(Comparator.comparing(Pairing::a).thenComparing(Pairing::b));
        chosen.forEach(p -> mates.add(p.sure(MateConfidence.byZone(p, rivals))));
    }

    /** A line drawn twice into one zone, or a header that comes back from two places: one name, one slot. */
    private void shared() {
        List<Pairing> more = new ArrayList<>();
        Set<Slot> done = new HashSet<>();
        for (Ref r : index.refs) {
            for (Slot a : slots.get(r)) {
                if (!mates.answered(a) && a.zone() != null && !r.labelKey().isEmpty() && done.add(a)) {
                    index.labelled(a.sheetKey(), r.labelKey()).forEach(other -> share(a, other, more));
                }
            }
        }
        more.forEach(mates::add);
    }

    private void share(Slot a, Ref other, List<Pairing> more) {
        if (other.equals(a.ref()) || tags.untied(a.ref(), other)) {
            return;
        }
        for (Slot b : slots.get(other)) {
            Facts facts = Facts.of(a, b, index);
            if (mates.answered(b) && !sharing(a, mates.of(b)) || !facts.enough()) {
                continue;
            }
            more.add(new Pairing(a, b, facts, MateConfidence.shared(facts)));
        }
    }

    private static boolean sharing(Slot a, List<Pairing> taken) {
        return taken.stream()
                .anyMatch(p -> p.a().ref().labelKey().equals(a.ref().labelKey())
                        && p.b().ref().labelKey().equals(a.ref().labelKey()));
    }
}
