package linewalk.linker;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.ReferenceReading.Says;
import linewalk.drawing.Target;

/**
 * A sheet may be named by its number here and by its drawing number there: targets are brought to the one name that the
 * set gives it. A drawing number that several sheets bear names none of them, and no sheet has two numbers: a second one
 * that stands somewhere on it is another sheet's.
 */
final class OtherNames {

    private final Map<String, String> names = new HashMap<>();

    OtherNames(List<PageDraft> pages) {
        Set<String> own = new HashSet<>();
        pages.forEach(p -> own.add(Names.sheetKey(p.name)));
        Map<String, Set<String>> pagesOf = new HashMap<>();
        for (PageDraft p : pages) {
            p.reading.names().stream()
                    .filter(n -> !(isNumber(n.name()) && isNumber(p.name)))
                    .forEach(n -> add(pagesOf, n.name(), p));
            if (p.reading.drawingNumber() != null) {
                add(pagesOf, p.reading.drawingNumber(), p);
            }
        }
        pagesOf.forEach((key, named) -> {
            if (named.size() == 1 && !own.contains(key)) {
                names.put(key, named.iterator().next());
            }
        });
    }

    private static void add(Map<String, Set<String>> pagesOf, String name, PageDraft p) {
        pagesOf.computeIfAbsent(Names.sheetKey(name), k -> new HashSet<>()).add(p.name);
    }

    private static boolean isNumber(String name) {
        return name.matches("\\d{1,4}");
    }

    List<Says> settle(ReferenceReading r) {
        return r.readings().stream()
                .map(s -> new Says(s.targets().stream().map(this::settle).toList(), s.likelihood()))
                .toList();
    }

    private Target settle(Target t) {
        String name = names.get(Names.sheetKey(t.sheet()));
        return name == null ? t : new Target(name, t.zone());
    }
}
