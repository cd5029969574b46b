package linewalk.linker;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import linewalk.drawing.Finding;
import linewalk.drawing.Rule;

/** Sheets that are there twice, or not at all. */
final class SheetCheck {

    /** More missing sheets than this are counted, not listed. */
    private static final int LISTED = 20;

    private SheetCheck() {}

    static void check(List<PageDraft> pages, List<Finding> findings) {
        Map<String, List<PageDraft>> byName = new LinkedHashMap<>();
        pages.forEach(p -> byName.computeIfAbsent(Names.sheetKey(p.name), k -> new ArrayList<>())
                .add(p));
        byName.values().stream().filter(same -> same.size() > 1).forEach(same -> findings.add(twice(same)));
        Map<Integer, Long> counts = pages.stream()
                .filter(p -> p.reading.sheetCount() != null)
                .collect(Collectors.groupingBy(p -> p.reading.sheetCount(), TreeMap::new, Collectors.counting()));
        for (Map.Entry<Integer, Long> e : counts.entrySet()) {
            if (e.getValue() * 2 >= pages.size() && e.getKey() > 1 && e.getKey() < 10_000) {
                gap(e.getKey(), byName.keySet(), findings);
            }
        }
    }

    private static Finding twice(List<PageDraft> same) {
        String where = same.stream().map(p -> p.page.toString()).collect(Collectors.joining(" and "));
        return new Finding(
                Rule.SHEET_TWICE,
                same.get(1).page,
                null,
                List.of(),
                List.of(),
                "Sheet " + same.get(0).name + " is there twice: " + where + ".",
                "take one out of the set, or give one its right name with a sheet tag");
    }

    private static void gap(int count, Set<String> names, List<Finding> findings) {
        long numbered = names.stream().filter(n -> n.matches("\\d{1,4}")).count();
        if (numbered * 2 < names.size()) {
            return;
        }
        List<String> missing = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            if (!names.contains(Integer.toString(i))) {
                missing.add(Integer.toString(i));
            }
        }
        if (missing.isEmpty()) {
            return;
        }
        String list = String.join(", ", missing.subList(0, Math.min(LISTED, missing.size())))
                + (missing.size() > LISTED ? " and " + (missing.size() - LISTED) + " more" : "");
        findings.add(new Finding(
                Rule.SHEET_GAP,
                null,
                null,
                List.of(),
                List.of(),
                "The sheets say 'of " + count + "', but " + list + (missing.size() == 1 ? " is" : " are")
                        + " not in the set.",
                "add the missing sheet" + (missing.size() == 1 ? "" : "s")));
    }
}
