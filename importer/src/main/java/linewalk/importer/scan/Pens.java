package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The few pens that a sheet was drawn with, from the widths of its longer lines; widths of single strokes are uncertain. */
final class Pens {

    private static final double BIN_PX = 0.1;

    /** Two pens differ by at least this (neighbours in ISO 128 by 1.4), in shares of the thinner one, and in pixels. */
    private static final double APART = 0.15;

    private static final double APART_PX = 0.25;

    private final List<Double> widths = new ArrayList<>();

    /** @param lengthByWidth how much length was drawn in each width, both in pixels */
    Pens(Map<Double, Double> lengthByWidth) {
        TreeMap<Integer, Double> bins = new TreeMap<>();
        lengthByWidth.forEach((w, l) -> bins.merge((int) Math.round(w / BIN_PX), l, Double::sum));
        if (bins.isEmpty()) {
            return;
        }
        TreeMap<Integer, Double> smooth = new TreeMap<>();
        for (int i = bins.firstKey(); i <= bins.lastKey(); i++) {
            double sum = 0;
            for (int k = -4; k <= 4; k++) {
                sum += bins.getOrDefault(i + k, 0.0) * Math.exp(-k * k / 6.0);
            }
            smooth.put(i, sum);
        }
        List<Map.Entry<Integer, Double>> byLength = new ArrayList<>(smooth.entrySet());
        byLength.sort(Map.Entry.<Integer, Double>comparingByValue().reversed());
        double total = lengthByWidth.values().stream().mapToDouble(l -> l).sum();
        for (Map.Entry<Integer, Double> e : byLength) {
            double w = e.getKey() * BIN_PX;
            boolean peak = smooth.getOrDefault(e.getKey() - 1, 0.0) <= e.getValue()
                    && smooth.getOrDefault(e.getKey() + 1, 0.0) <= e.getValue();
            boolean known = widths.stream().anyMatch(o -> Math.abs(o - w) < APART * Math.min(o, w) + APART_PX);
            if (peak && !known && e.getValue() > 0.004 * total) {
                widths.add(w);
            }
        }
    }

    /** The pen nearest to a measured width. */
    double nearest(double width) {
        double best = width;
        double least = Double.MAX_VALUE;
        for (double w : widths) {
            double off = Math.abs(Math.log(w / Math.max(0.1, width)));
            if (off < least) {
                least = off;
                best = w;
            }
        }
        return best;
    }

    List<Double> widths() {
        return List.copyOf(widths);
    }
}
