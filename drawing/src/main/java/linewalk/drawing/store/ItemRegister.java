package linewalk.drawing.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Item numbers of a set ({@code items.json}): the same on every print, kept over revisions, never reused. A designation
 * that disappears from the drawings keeps its number.
 */
final class ItemRegister {

    private record Items(Map<String, Integer> items) {}

    private ItemRegister() {}

    /** Numbers for all designations; new ones are given in the order asked and kept. */
    static Map<String, Integer> numbers(Path folder, Collection<String> designations) {
        Path file = folder.resolve("items.json");
        Map<String, Integer> items = new LinkedHashMap<>();
        if (Files.exists(file)) {
            items.putAll(Json.read(file, Items.class).items());
        }
        int known = items.size();
        int last = items.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        for (String d : designations) {
            if (!items.containsKey(d)) {
                items.put(d, ++last);
            }
        }
        if (items.size() > known) {
            Json.write(file, new Items(items));
        }
        return items;
    }
}
