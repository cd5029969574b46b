package linewalk.samples.random;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Names the pipes that go on from one reference to another, two by two. */
final class Links {
    private final Map<Goes, List<String>> names = new IdentityHashMap<>();
    private final Map<String, Integer> ends = new HashMap<>();
    private int named;

    Links(List<Goes> references, Chance chance) {
        pair(chance.shuffled(references.stream().filter(Goes::letter).toList()), true);
        pair(chance.shuffled(references.stream().filter(goes -> !goes.letter()).toList()), false);
    }

    private void pair(List<Goes> references, boolean letter) {
        List<Goes> ends1 = new ArrayList<>();
        // The second pipe of a header comes half a round later, so that no reference is its own other end.
        references.forEach(ends1::add);
        references.stream().filter(goes -> goes.targets() == 2).forEach(ends1::add);
        int half = (ends1.size() + 1) / 2;
        for (int i = 0; i < half; i++) {
            String name = letter ? Character.toString('A' + named % 26) : Integer.toString(101 + named);
            named++;
            name(ends1.get(i), name);
            if (i + half < ends1.size() && ends1.get(i + half) != ends1.get(i)) {
                name(ends1.get(i + half), name);
            }
        }
    }

    private void name(Goes goes, String name) {
        names.computeIfAbsent(goes, key -> new ArrayList<>()).add(name);
        ends.merge(name, 1, Integer::sum);
    }

    Map<Goes, List<String>> names() {
        return names;
    }

    /** Pipes of which only one end is drawn. */
    List<String> loose() {
        return ends.entrySet().stream()
                .filter(end -> end.getValue() == 1)
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }
}
