package linewalk.linker;

import java.util.LinkedHashSet;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.Line;

/**
 * The part of a set that one print shows.
 *
 * @param title in words: {@code Circuit of 1A1}
 * @param parts in the order in which they were reached
 * @param lines in the order in which they were reached
 */
public record Excerpt(String title, Set<Component> parts, Set<Line> lines) {

    public Excerpt {
        parts = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(parts));
        lines = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(lines));
    }
}
