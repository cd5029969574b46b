package linewalk.renderer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import linewalk.drawing.Reference;

/** Where a circuit goes on from sheet to sheet: one letter at all references that are mates. */
final class CuttingLinks {

    /** @param where the other ends are, in words */
    record Mark(Reference reference, String letter, String where) {}

    private record Shown(Panel panel, Reference reference) {}

    private final Map<Panel, List<Mark>> marks = new LinkedHashMap<>();
    private final List<Shown> shown = new ArrayList<>();

    CuttingLinks(SetIndex index, List<Panel> panels, MatchMarks letters) {
        for (Panel p : panels) {
            p.view().stay.references().stream()
                    .distinct()
                    .filter(r -> p.shows(p.view().map(r.place())))
                    .forEach(r -> shown.add(new Shown(p, r)));
        }
        shown.forEach(s -> name(s, index.crossing(s.reference), letters));
    }

    List<Mark> on(Panel panel) {
        return marks.getOrDefault(panel, List.of());
    }

    private void name(Shown end, List<Reference> crossing, MatchMarks letters) {
        Set<String> ids = crossing.stream().map(Reference::id).collect(Collectors.toSet());
        Set<Integer> pages = new TreeSet<>();
        for (Shown s : shown) {
            if (ids.contains(s.reference.id()) && !s.reference.id().equals(end.reference.id())) {
                pages.add(s.panel.page());
            }
        }
        if (!pages.isEmpty()) {
            int here = pages.remove(end.panel.page()) ? 1 : 0;
            marks.computeIfAbsent(end.panel, k -> new ArrayList<>())
                    .add(new Mark(
                            end.reference,
                            letters.letter("mates " + crossing.get(0).id()),
                            MatchMarks.where(here, List.copyOf(pages))));
        }
    }
}
