package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Line;
import linewalk.drawing.Rule;
import linewalk.drawing.Zone;

/** Line ends in nothing. One that answers a one-way reference is part of that reference's finding. */
final class LooseEnds {

    private static final class Loose {
        final PageDraft page;
        final Line line;
        final End.Open end;
        boolean told;

        Loose(PageDraft page, Line line, End.Open end) {
            this.page = page;
            this.line = line;
            this.end = end;
        }
    }

    private record Spot(String sheet, Zone zone) {}

    /** A handful of loose ends is listed one by one, whatever their share. */
    private static final int FEW = 5;

    /** One end in so many is loose. */
    private static final int MANY = 20;

    private final Map<PageDraft, Integer> ends = new HashMap<>();
    private final List<Loose> all = new ArrayList<>();
    private final Map<Spot, List<Loose>> byZone = new HashMap<>();

    LooseEnds(List<PageDraft> pages) {
        for (PageDraft p : pages) {
            p.lines.forEach(l -> collect(p, l));
        }
    }

    /** Lines that join nothing at all are frames, leaders, notes: drawing, not pipe. */
    private void collect(PageDraft page, Line line) {
        if (line.ends().stream().allMatch(e -> e instanceof End.Open)) {
            return;
        }
        ends.merge(page, line.ends().size(), Integer::sum);
        for (End e : line.ends()) {
            if (e instanceof End.Open o) {
                Loose loose = new Loose(page, line, o);
                all.add(loose);
                page.zoneAt(o.place()).ifPresent(z -> byZone.computeIfAbsent(
                                new Spot(Names.sheetKey(page.name), z), k -> new ArrayList<>())
                        .add(loose));
            }
        }
    }

    /** A loose end where a one-way reference points, the one with its label first; it counts as told from then on. */
    Optional<String> answer(String sheetKey, Zone zone, String labelKey) {
        List<Loose> there = byZone.getOrDefault(new Spot(sheetKey, zone), List.of()).stream()
                .filter(l -> !l.told)
                .toList();
        Optional<Loose> best = there.stream()
                .filter(l ->
                        !labelKey.isEmpty() && Names.labelKey(l.line.label()).equals(labelKey))
                .findFirst()
                .or(() -> there.stream().findFirst());
        best.ifPresent(l -> l.told = true);
        return best.map(l -> l.line.label() == null ? "a line" : "line " + l.line.label());
    }

    void check(List<Finding> findings) {
        Map<PageDraft, List<Loose>> byPage = new LinkedHashMap<>();
        all.stream().filter(l -> !l.told).forEach(l -> byPage.computeIfAbsent(l.page, k -> new ArrayList<>())
                .add(l));
        int all = ends.values().stream().mapToInt(Integer::intValue).sum();
        int open = byPage.values().stream().mapToInt(List::size).sum();
        boolean unknownParts = open > FEW && open * MANY > all;
        byPage.forEach((page, loose) -> {
            if (unknownParts) {
                findings.add(unread(page, loose));
            } else {
                loose.forEach(l -> findings.add(finding(l)));
            }
        });
    }

    private static Finding finding(Loose l) {
        String line = l.line.label() == null ? "A line" : "Line " + l.line.label();
        return new Finding(
                Rule.LOOSE_END,
                l.page.page,
                l.end.place(),
                List.of(),
                List.of(),
                line + " ends in nothing on " + l.page.address(l.end.place()) + ".",
                "add the reference or the part that it leads to, or join it by hand");
    }

    /** Where so many ends of a set seem loose, it is the reading that is at fault, and a list of them would hide the rest. */
    private Finding unread(PageDraft page, List<Loose> loose) {
        String places = loose.stream()
                .flatMap(l -> page.zoneAt(l.end.place()).stream())
                .map(Zone::toString)
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        return new Finding(
                Rule.DOUBTFUL_READING,
                page.page,
                null,
                List.of(),
                List.of(),
                loose.size() + " of " + ends.get(page) + " line ends on sheet " + page.name
                        + (places.isEmpty() ? "" : " (" + places + ")")
                        + " end in nothing that was read: its parts are probably drawn in a way that is not known, so its"
                        + " loose ends are not listed one by one.",
                "see what was read with: linewalk overlay");
    }
}
