package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** How often what is told with a confidence is right: joins, mates, components and ports in bins of confidence. */
final class Calibration {

    static final double SURE = PairScore.SURE;

    private static final double[] BINS = {0, 0.5, 0.7, 0.9, 0.97, 1.01};

    /** Counts of one bin. */
    record Count(long told, long right) {
        double share() {
            return (double) right / told;
        }
    }

    private final Map<String, Count[]> bins = new TreeMap<>();

    void add(Truth truth, JsonNode export) {
        ReferenceScore references = new ReferenceScore(truth, export);
        new PairScore(truth, references).told().forEach(told -> add("mates", told));
        if (!truth.on("components").isEmpty()) {
            ComponentScore components = new ComponentScore(truth, export);
            components.told().forEach(told -> add("components", told));
            components.toldPorts().forEach(told -> add("ports", told));
            new LineScore(truth, export, references, components).told().forEach(told -> add("joins", told));
        }
    }

    private void add(String what, Told told) {
        Count[] counts = bins.computeIfAbsent(what, k -> new Count[BINS.length - 1]);
        int bin = 0;
        while (told.confidence() >= BINS[bin + 1]) {
            bin++;
        }
        Count before = counts[bin] == null ? new Count(0, 0) : counts[bin];
        counts[bin] = new Count(before.told() + 1, before.right() + (told.right() ? 1 : 0));
    }

    Set<String> things() {
        return bins.keySet();
    }

    /** Of everything told at {@link #SURE} and above. */
    Count sure(String what) {
        long told = 0;
        long right = 0;
        for (int i = 0; i + 1 < BINS.length; i++) {
            Count c = bins.get(what)[i];
            if (c != null && BINS[i] >= SURE) {
                told += c.told();
                right += c.right();
            }
        }
        return new Count(told, right);
    }

    String table() {
        StringBuilder out = new StringBuilder("told confidence     ");
        for (int i = 0; i + 1 < BINS.length; i++) {
            out.append(String.format("%4.2f to %4.2f     ", BINS[i], Math.min(1, BINS[i + 1])));
        }
        bins.forEach((what, counts) -> {
            out.append(String.format("%n%-12s", what));
            for (Count c : counts) {
                out.append(c == null ? String.format("%17s", "-") : String.format("%7d %9.4f", c.told(), c.share()));
            }
        });
        return out.toString();
    }
}
