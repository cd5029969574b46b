package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.struct.image.GrayU8;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Ink is told from paper where the light falls badly. */
class InkTest {

    private static final int SIDE = 512;

    private interface Tone {
        double at(int x, int y);
    }

    private static Bits ink(Tone tone) {
        GrayU8 grey = new GrayU8(SIDE, SIDE);
        Random chance = new Random(4);
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                double t = tone.at(x, y) + 3 * chance.nextGaussian();
                grey.set(x, y, (int) Math.max(0, Math.min(255, t)));
            }
        }
        return Ink.of(grey);
    }

    private static boolean onLine(int y) {
        return y >= 250 && y < 254;
    }

    private static long wrong(Bits bits) {
        long n = 0;
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                n += bits.get(x, y) != onLine(y) ? 1 : 0;
            }
        }
        return n;
    }

    @Test
    void aShadowIsNoInkAndHidesNone() {
        // paper from 240 down to 90, ink always a third of it
        assertThat(wrong(ink((x, y) -> (240 - 150.0 * x / SIDE) * (onLine(y) ? 0.33 : 1))))
                .isLessThan(40);
    }

    @Test
    void aFoldIsNoInk() {
        assertThat(wrong(ink((x, y) -> onLine(y) ? 50 : x > 200 && x < 206 ? 200 : 235)))
                .isLessThan(40);
    }

    @Test
    void fadedInkIsInk() {
        assertThat(wrong(ink((x, y) -> onLine(y) ? 170 : 235))).isLessThan(40);
    }

    @Test
    void emptyPaperHasNone() {
        Bits bits = ink((x, y) -> 235);
        long n = 0;
        for (int y = 0; y < SIDE; y++) {
            n += bits.nextInk(0, y) < SIDE ? 1 : 0;
        }
        assertThat(n).isLessThan(3);
    }
}
