package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import linewalk.drawing.Zone;

/** Finds for each slot the few others that could answer it, by zone, by label and by pointing back: never all pairs. */
final class PairFinder {

    private final RefIndex index;
    private final BiPredicate<Ref, Ref> forbidden;

    PairFinder(RefIndex index, BiPredicate<Ref, Ref> forbidden) {
        this.index = index;
        this.forbidden = forbidden;
    }

    /** Pairs with enough evidence, each once, the smaller slot first. */
    List<Pairing> pairs(List<Slot> slots) {
        Map<Ref, List<Slot>> bySlotRef = new HashMap<>();
        slots.forEach(
                s -> bySlotRef.computeIfAbsent(s.ref(), k -> new ArrayList<>()).add(s));
        Set<Pairing> pairs = new LinkedHashSet<>();
        for (Slot a : slots) {
            for (Ref r : near(a)) {
                for (Slot b : bySlotRef.getOrDefault(r, List.of())) {
                    if (!r.equals(a.ref()) && !forbidden.test(a.ref(), r)) {
                        consider(a, b, pairs);
                    }
                }
            }
        }
        return new ArrayList<>(pairs);
    }

    private void consider(Slot a, Slot b, Set<Pairing> pairs) {
        Slot first = a.compareTo(b) < 0 ? a : b;
        Slot second = a.compareTo(b) < 0 ? b : a;
        Facts facts = Facts.of(first, second, index);
        if (facts.enough()) {
            pairs.add(new Pairing(first, second, facts, 0));
        }
    }

    private Set<Ref> near(Slot a) {
        Set<Ref> near = new LinkedHashSet<>();
        String sheet = a.sheetKey();
        if (a.zone() != null) {
            for (PageDraft page : index.pages(sheet)) {
                page.around(a.zone()).forEach(z -> near.addAll(index.inZone(sheet, z)));
            }
        }
        if (!a.ref().labelKey().isEmpty()) {
            near.addAll(index.labelled(sheet, a.ref().labelKey()));
        }
        for (Zone z : a.ref().touched()) {
            near.addAll(index.pointingAt(a.ref().sheetKey(), z));
        }
        return near;
    }
}
