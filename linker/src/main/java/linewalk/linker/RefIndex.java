package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import linewalk.drawing.Zone;

/** The set's references by sheet, zone, label, and by where they point. */
final class RefIndex {

    private record Spot(String sheet, Object at) {
        @Override
        public boolean equals(Object o) {
            return o instanceof Spot s && sheet.equals(s.sheet) && Objects.equals(at, s.at);
        }

        @Override
        public int hashCode() {
            return 31 * sheet.hashCode() + Objects.hashCode(at);
        }
    }

    private final Map<String, List<PageDraft>> pages = new HashMap<>();
    private final Map<Spot, List<Ref>> byZone = new HashMap<>();
    private final Map<Spot, List<Ref>> byLabel = new HashMap<>();
    private final Map<String, List<Ref>> byName = new HashMap<>();
    private final Map<Spot, List<Ref>> pointingAt = new HashMap<>();
    final List<Ref> refs;

    /** Ids of references that are perhaps none. */
    final Set<String> strange;

    RefIndex(List<PageDraft> pages, List<Ref> refs, Set<String> strange) {
        this.refs = refs;
        this.strange = strange;
        pages.forEach(p -> this.pages
                .computeIfAbsent(Names.sheetKey(p.name), k -> new ArrayList<>())
                .add(p));
        for (Ref r : refs) {
            r.touched().forEach(z -> add(byZone, r.sheetKey(), z, r));
            add(byLabel, r.sheetKey(), r.labelKey(), r);
            byName.computeIfAbsent(r.labelKey(), k -> new ArrayList<>()).add(r);
            for (int i = 0; i < r.targets().size(); i++) {
                add(pointingAt, r.keys().targets().get(i), r.targets().get(i).zone(), r);
            }
        }
    }

    private static void add(Map<Spot, List<Ref>> map, String sheet, Object at, Ref r) {
        List<Ref> list = map.computeIfAbsent(new Spot(sheet, at), k -> new ArrayList<>());
        if (list.isEmpty() || list.get(list.size() - 1) != r) {
            list.add(r);
        }
    }

    List<PageDraft> pages(String sheetKey) {
        return pages.getOrDefault(sheetKey, List.of());
    }

    List<Ref> inZone(String sheetKey, Zone zone) {
        return byZone.getOrDefault(new Spot(sheetKey, zone), List.of());
    }

    /** References on a sheet with a label; those without one under the empty key. */
    List<Ref> labelled(String sheetKey, String labelKey) {
        return byLabel.getOrDefault(new Spot(sheetKey, labelKey), List.of());
    }

    /** References of the whole set with a label. */
    List<Ref> named(String labelKey) {
        return byName.getOrDefault(labelKey, List.of());
    }

    /** References that name this sheet and zone; null for those that name the sheet alone. */
    List<Ref> pointingAt(String sheetKey, Zone zone) {
        return pointingAt.getOrDefault(new Spot(sheetKey, zone), List.of());
    }
}
