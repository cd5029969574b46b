package linewalk.tests.quality;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What prints have reached, in {@code print-quality.csv}: nothing lies on anything, no capitals are under 2.5 mm, and all
 * other figures may fall, never rise. A row for an overlap is a debt that is known; without one there is none. Nothing
 * writes the file but people.
 */
final class Ratchet {

    private static final double LEAST_CAPITALS_MM = 2.5;

    private final Map<String, Map<String, Double>> byPrint = new TreeMap<>();

    Ratchet(InputStream csv) {
        try (csv) {
            String text = new String(csv.readAllBytes(), StandardCharsets.UTF_8);
            text.lines().skip(1).map(row -> row.split(",")).forEach(cells -> byPrint.computeIfAbsent(
                            cells[0], k -> new TreeMap<>())
                    .put(cells[1], Double.valueOf(cells[2])));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Ratchet checkedIn() {
        return new Ratchet(Ratchet.class.getResourceAsStream("/print-quality.csv"));
    }

    /** What is worse than it was, or has no row, or is no longer measured; a sentence each. */
    List<String> faults(String print, Map<String, Double> figures) {
        Map<String, Double> known = byPrint.getOrDefault(print, Map.of());
        List<String> faults = new ArrayList<>();
        TreeSet<String> names = new TreeSet<>(known.keySet());
        names.addAll(figures.keySet());
        for (String name : names) {
            Double now = figures.get(name);
            Double most = known.getOrDefault(name, name.startsWith("overlap.") ? 0.0 : null);
            if (now == null) {
                faults.add(print + ", " + name + " has a row and is no longer measured");
            } else if (name.equals("capitals.mm")) {
                if (now < LEAST_CAPITALS_MM) {
                    faults.add(row(print, name, now) + " is under " + LEAST_CAPITALS_MM);
                }
            } else if (isHeld(name) && most == null) {
                faults.add(row(print, name, now) + " has no row");
            } else if (isHeld(name) && thousandths(now) > thousandths(most)) {
                faults.add(row(print, name, now) + " is more than " + most);
            }
        }
        return faults;
    }

    /** The original's lettering is as large as its drafter made it where it is not on the path. */
    private static boolean isHeld(String name) {
        return !name.equals("cutting.capitals.mm");
    }

    /** Rows that could be written into the file, better than what it holds. */
    List<String> gains(String print, Map<String, Double> figures) {
        Map<String, Double> known = byPrint.getOrDefault(print, Map.of());
        return figures.entrySet().stream()
                .filter(e -> known.containsKey(e.getKey()))
                .filter(e -> thousandths(e.getValue()) < thousandths(known.get(e.getKey())))
                .map(e -> row(print, e.getKey(), e.getValue()))
                .toList();
    }

    private static double thousandths(double x) {
        return Math.rint(x * 1000);
    }

    private static String row(String print, String figure, double value) {
        return String.format(Locale.ROOT, "%s,%s,%.3f", print, figure, value);
    }
}
