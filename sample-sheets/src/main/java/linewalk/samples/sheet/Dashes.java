package linewalk.samples.sheet;

import java.util.ArrayList;
import java.util.List;

/** A straight piece taken apart into its dashes, as an exploded line type: a dash at both ends. */
final class Dashes {
    private Dashes() {}

    /** From and to, as parts of the whole from 0 to 1. {@code pattern} is dash, gap, ... in the measure of the length. */
    static List<double[]> along(double length, float... pattern) {
        if (pattern.length == 0 || length <= pattern[0]) {
            return List.of(new double[] {0, 1});
        }
        double period = 0;
        for (float part : pattern) {
            period += part;
        }
        long periods = Math.max(1, Math.round((length - pattern[0]) / period));
        double stretch = length / (periods * period + pattern[0]);
        List<double[]> out = new ArrayList<>();
        for (int i = 0; i < periods; i++) {
            double at = i * period;
            for (int k = 0; k < pattern.length; k += 2) {
                out.add(new double[] {at * stretch / length, (at + pattern[k]) * stretch / length});
                at += pattern[k] + pattern[k + 1];
            }
        }
        out.add(new double[] {1 - pattern[0] * stretch / length, 1});
        return out;
    }
}
