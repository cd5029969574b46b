package linewalk.renderer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import linewalk.drawing.Sheet;

/** Sheets by revision, as short as they can be told: "1-6, 8 rev B; 7, 9 rev C". */
final class SheetRevisions {

    private static final int LONGEST_NUMBER = 6;

    private SheetRevisions() {}

    static String of(List<Sheet> sheets) {
        Map<String, List<String>> names =
                new TreeMap<>(Comparator.comparing(String::isEmpty).thenComparing(Comparator.naturalOrder()));
        sheets.forEach(s -> names.computeIfAbsent(s.revision() == null ? "" : s.revision(), k -> new ArrayList<>())
                .add(s.name()));
        return names.entrySet().stream()
                .map(e -> ranges(e.getValue()) + (e.getKey().isEmpty() ? " without revision" : " rev " + e.getKey()))
                .collect(Collectors.joining("; "));
    }

    private static String ranges(List<String> names) {
        List<String> sorted = names.stream()
                .sorted(Comparator.comparingInt(SheetRevisions::number).thenComparing(Comparator.naturalOrder()))
                .toList();
        List<String> told = new ArrayList<>();
        for (int from = 0, to; from < sorted.size(); from = to) {
            to = from + 1;
            while (to < sorted.size() && follows(sorted.get(to - 1), sorted.get(to))) {
                to++;
            }
            if (to - from > 2) {
                told.add(sorted.get(from) + "-" + sorted.get(to - 1));
            } else {
                told.addAll(sorted.subList(from, to));
            }
        }
        return String.join(", ", told);
    }

    private static boolean follows(String one, String next) {
        return number(one) < Integer.MAX_VALUE && number(next) == number(one) + 1;
    }

    /** Sheets that have no plain number come last. */
    private static int number(String name) {
        return name.matches("[0-9]{1," + LONGEST_NUMBER + "}") ? Integer.parseInt(name) : Integer.MAX_VALUE;
    }
}
