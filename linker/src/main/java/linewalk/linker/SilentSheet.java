package linewalk.linker;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import linewalk.drawing.Finding;
import linewalk.drawing.Rule;

/**
 * Where a sheet answers none of the references from another, its ends are rather written in a form that is not known (the
 * clamp of a device) than all missing: told together, not reference by reference.
 */
final class SilentSheet {

    private static final int SEVERAL = 4;
    /** A longer list is not looked through. */
    private static final int A_FINDING = 8;

    private record Way(String from, String to) {}

    private final Map<Way, List<Slot>> unanswered = new LinkedHashMap<>();
    private final Map<Way, List<Finding>> told = new LinkedHashMap<>();
    private final RefIndex index;

    SilentSheet(RefIndex index) {
        this.index = index;
    }

    void add(Slot s, Finding f) {
        Way way = new Way(s.ref().sheetKey(), s.sheetKey());
        unanswered.computeIfAbsent(way, k -> new ArrayList<>()).add(s);
        told.computeIfAbsent(way, k -> new ArrayList<>()).add(f);
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        unanswered.forEach((way, slots) -> {
            if (slots.size() >= SEVERAL && isSilent(way)) {
                for (int i = 0; i < slots.size(); i += A_FINDING) {
                    all.add(once(slots.subList(i, Math.min(slots.size(), i + A_FINDING))));
                }
            } else {
                all.addAll(told.get(way));
            }
        });
        return all;
    }

    private boolean isSilent(Way way) {
        return index.refs.stream()
                .noneMatch(
                        r -> r.sheetKey().equals(way.to) && r.keys().targets().contains(way.from));
    }

    private static Finding once(List<Slot> slots) {
        Ref first = slots.get(0).ref();
        String to = slots.get(0).target().sheet();
        String said = slots.stream().map(s -> "'" + s.ref().text() + "'").collect(Collectors.joining(", "));
        return new Finding(
                Rule.NOTHING_THERE,
                first.page().page,
                first.place(),
                slots.stream().map(s -> s.ref().id()).distinct().toList(),
                List.of(),
                "References on sheet " + first.page().name + " lead to sheet " + to + " (" + said
                        + "), where no reference names sheet " + first.page().name + ".",
                "if sheet " + to + " names these ends in a form of its own, give it in set.json (patterns) or as tags;"
                        + " else they are missing there");
    }
}
