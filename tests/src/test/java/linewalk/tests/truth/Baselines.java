package linewalk.tests.truth;

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
 * What was reached, in {@code baselines.csv}: ratios may not fall and counts may not rise, to three decimals. Nothing
 * writes the file but people: what is better than it stays so only when the file says it.
 */
final class Baselines {

    private final Map<String, Map<String, Double>> bySet = new TreeMap<>();

    Baselines(InputStream csv) {
        try (csv) {
            String text = new String(csv.readAllBytes(), StandardCharsets.UTF_8);
            text.lines().skip(1).map(row -> row.split(",")).forEach(cells -> bySet.computeIfAbsent(
                            cells[0], k -> new TreeMap<>())
                    .put(cells[1], Double.valueOf(cells[2])));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Baselines checkedIn() {
        return new Baselines(Baselines.class.getResourceAsStream("/baselines.csv"));
    }

    /** What is worse than the baseline, or has none, or is no longer measured; a sentence each. */
    List<String> faults(String set, Map<String, Double> figures) {
        Map<String, Double> known = bySet.getOrDefault(set, Map.of());
        List<String> faults = new ArrayList<>();
        TreeSet<String> names = new TreeSet<>(known.keySet());
        names.addAll(figures.keySet());
        for (String name : names) {
            Double now = figures.get(name);
            Double least = known.get(name);
            if (least == null) {
                faults.add(row(set, name, now) + " has no baseline");
            } else if (now == null) {
                faults.add(set + ", " + name + " has a baseline and is no longer measured");
            } else if (gain(name, now, least) < 0) {
                faults.add(row(set, name, now) + " is worse than the baseline " + least);
            }
        }
        return faults;
    }

    /** Rows that could be written into the file, better than what it holds. */
    List<String> gains(String set, Map<String, Double> figures) {
        Map<String, Double> known = bySet.getOrDefault(set, Map.of());
        return figures.entrySet().stream()
                .filter(e -> known.containsKey(e.getKey()))
                .filter(e -> gain(e.getKey(), e.getValue(), known.get(e.getKey())) > 0)
                .map(e -> row(set, e.getKey(), e.getValue()))
                .toList();
    }

    private static int gain(String name, double now, double baseline) {
        boolean lessIsBetter = name.startsWith("silent.") || name.endsWith("false_alarms");
        int gain = Double.compare(thousandths(now), thousandths(baseline));
        return lessIsBetter ? -gain : gain;
    }

    private static double thousandths(double x) {
        return Math.rint(x * 1000);
    }

    private static String row(String set, String name, double value) {
        return String.format(Locale.ROOT, "%s,%s,%.3f", set, name, value);
    }
}
