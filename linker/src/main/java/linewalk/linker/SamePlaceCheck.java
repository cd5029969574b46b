package linewalk.linker;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.Finding;
import linewalk.drawing.Rule;
import linewalk.drawing.Target;

/** Several references in one zone with one and the same target: only their labels, if anything, tell them apart. */
final class SamePlaceCheck {

    private record Way(String fromSheet, Object fromZone, String toSheet, Object toZone) {
        Way back() {
            return new Way(toSheet, toZone, fromSheet, fromZone);
        }
    }

    private final RefIndex index;
    private final Mates mates;

    SamePlaceCheck(RefIndex index, Mates mates) {
        this.index = index;
        this.mates = mates;
    }

    void check(List<Finding> findings) {
        letters(findings);
        Map<Way, List<Ref>> groups = new LinkedHashMap<>();
        for (Ref r : index.refs) {
            for (Target t : r.targets()) {
                if (r.zone() != null && t.zone() != null) {
                    Way way = new Way(r.sheetKey(), r.zone(), Names.sheetKey(t.sheet()), t.zone());
                    groups.computeIfAbsent(way, k -> new ArrayList<>()).add(r);
                }
            }
        }
        Set<Way> done = new HashSet<>();
        groups.forEach((way, refs) -> {
            if (lines(refs) > 1 && !done.contains(way.back()) && done.add(way)) {
                List<Ref> far = groups.getOrDefault(way.back(), List.of());
                findings.add(finding(refs, lines(far) > 1 ? far : List.of()));
            }
        });
    }

    /** A match letter that stands twice for one sheet may mean two lines; longer names are drawn at several branches. */
    private void letters(List<Finding> findings) {
        Map<List<String>, List<Ref>> groups = new LinkedHashMap<>();
        for (Ref r : index.refs) {
            for (int i = 0; i < r.targets().size(); i++) {
                if (r.targets().get(i).zone() == null && r.labelKey().length() == 1) {
                    List<String> way = List.of(
                            r.sheetKey(), r.labelKey(), r.keys().targets().get(i));
                    groups.computeIfAbsent(way, k -> new ArrayList<>()).add(r);
                }
            }
        }
        groups.values().stream().filter(g -> g.size() > 1).forEach(g -> findings.add(shared(g)));
    }

    private static Finding shared(List<Ref> refs) {
        Ref first = refs.get(0);
        return new Finding(
                Rule.SAME_PLACE,
                first.page().page,
                first.place(),
                refs.stream().map(Ref::id).toList(),
                List.of(),
                refs.stream().map(Ref::said).collect(Collectors.joining(" and ")) + " share the letter " + first.label()
                        + ", so the other end may be that of either.",
                "give each line a letter of its own, or take one out if it is there twice");
    }

    /** How many lines a group stands for: references that share a name are one. */
    private static long lines(List<Ref> refs) {
        long named = refs.stream()
                .map(Ref::labelKey)
                .filter(k -> !k.isEmpty())
                .distinct()
                .count();
        long nameless = refs.stream().filter(r -> r.labelKey().isEmpty()).count();
        return named + nameless;
    }

    /** @param far their other ends, where they share one zone too */
    private Finding finding(List<Ref> refs, List<Ref> far) {
        Ref first = refs.get(0);
        boolean told = refs.stream().noneMatch(r -> r.labelKey().isEmpty());
        String labels = refs.stream()
                .map(r -> r.label() == null ? "one without" : r.label())
                .collect(Collectors.joining(", "));
        String mated = refs.stream().allMatch(mates::mated) ? "" : " Not all of them found a mate.";
        return new Finding(
                Rule.SAME_PLACE,
                first.page().page,
                first.place(),
                Stream.concat(refs.stream(), far.stream()).map(Ref::id).toList(),
                List.of(),
                refs.size() + " references on " + first.address() + " all say '" + first.text() + "'"
                        + (told
                                ? ", told apart only by their labels (" + labels + ")."
                                : " and their labels do not tell them apart.")
                        + (far.isEmpty() ? "" : " So do those on " + far.get(0).address() + ".")
                        + mated,
                told ? "move one end into another zone" : "give each line a number, or tie the mates by hand");
    }
}
