package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A circle that a line divides, with a sign free in its upper half and one in its lower that may touch the rim. */
class BubblesTest {

    private static final double PX_PER_MM = 300 / 25.4;

    private final Bits ink = new Bits(400, 400);

    private void set(boolean lying, int x, int y) {
        if (lying) {
            ink.set(y, x);
        } else {
            ink.set(x, y);
        }
    }

    private void bar(boolean lying, int x0, int y0, int x1, int y1) {
        for (int y = y0; y < y1; y++) {
            for (int x = x0; x < x1; x++) {
                set(lying, x, y);
            }
        }
    }

    /** Around 200, 200. */
    private void bubble(boolean lying, int lowerSignEnds) {
        for (int y = 0; y < 400; y++) {
            for (int x = 0; x < 400; x++) {
                if (Math.abs(Math.hypot(x - 200, y - 200) - 70) < 3) {
                    set(lying, x, y);
                }
            }
        }
        bar(lying, 130, 198, 271, 203);
        bar(lying, 196, 150, 201, 185);
        bar(lying, 170, 218, 175, lowerSignEnds);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aSignThatTouchesTheRimIsCutOffFromIt(boolean lying) {
        bubble(lying, 265);
        assertThat(Blobs.of(ink)).hasSize(2);

        assertThat(Bubbles.part(ink, Blobs.of(ink), PX_PER_MM)).isTrue();
        assertThat(Blobs.of(ink)).filteredOn(b -> b.longer() > 20).hasSize(3);
    }

    @Test
    void oneWithoutIsLeftAsItIs() {
        bubble(false, 250);
        List<Blob> before = Blobs.of(ink);
        assertThat(before).hasSize(3);

        assertThat(Bubbles.part(ink, before, PX_PER_MM)).isFalse();
    }

    @Test
    void aBarWithoutACircleIsNone() {
        bar(false, 130, 198, 271, 203);
        bar(false, 196, 150, 201, 185);
        bar(false, 170, 203, 175, 265);
        assertThat(Bubbles.part(ink, Blobs.of(ink), PX_PER_MM)).isFalse();
    }
}
