package linewalk.renderer;

import java.util.HashSet;
import java.util.Set;
import linewalk.drawing.Enclosure;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.PageKey;
import linewalk.linker.Excerpt;

/** Lines that lie wholly inside a manifold: passages drilled in the block, which nobody can touch. */
final class DrilledLines {

    private final Set<String> drilled = new HashSet<>();

    DrilledLines(Excerpt excerpt, java.util.List<Enclosure> enclosures) {
        for (Line line : excerpt.lines()) {
            if (line.kind() == LineKind.WORKING
                    && line.ends().size() > 1
                    && enclosures.stream().anyMatch(e -> holds(e, line, line.page()))) {
                drilled.add(line.id());
            }
        }
    }

    private static boolean holds(Enclosure e, Line line, PageKey page) {
        return e.page().equals(page)
                && line.ends().stream().allMatch(end -> e.box().contains(end.place()));
    }

    boolean has(Line line) {
        return drilled.contains(line.id());
    }

    boolean isEmpty() {
        return drilled.isEmpty();
    }
}
