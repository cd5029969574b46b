package linewalk.renderer.card;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Ranges of pressure gauges: 0 to the value, in bar. The values are those of EN 837-1, from memory. */
final class GaugeRange {

    private static final double[] UPPER_BAR = {1, 1.6, 2.5, 4, 6, 10, 16, 25, 40, 60, 100, 160, 250, 400, 600, 1000};
    /** A gauge should not stand beyond three quarters of its range (common practice, no source). */
    private static final double SHARE = 0.75;

    private GaugeRange() {}

    /** The upper value of the smallest range for a highest pressure; empty where none is large enough. */
    static OptionalDouble of(double highestBar) {
        return Arrays.stream(UPPER_BAR).filter(u -> highestBar <= SHARE * u).findFirst();
    }
}
