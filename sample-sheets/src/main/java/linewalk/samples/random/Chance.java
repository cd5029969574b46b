package linewalk.samples.random;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Draws of lots. */
final class Chance {
    private final Random random;

    /** The same lots for the same words. */
    Chance(String seed) {
        // Seeds side by side would begin with like numbers.
        random = new Random(0x9E3779B97F4A7C15L * seed.hashCode());
    }

    boolean is(double likelihood) {
        return random.nextDouble() < likelihood;
    }

    int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** On a grid of half a unit. */
    double snapped(double least, double most) {
        return Math.round(between(least, most) * 2) / 2.0;
    }

    <T> T of(List<T> things) {
        return things.get(random.nextInt(things.size()));
    }

    <T> List<T> shuffled(List<T> things) {
        List<T> out = new ArrayList<>(things);
        Collections.shuffle(out, random);
        return out;
    }
}
