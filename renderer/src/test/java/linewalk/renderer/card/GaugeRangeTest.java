package linewalk.renderer.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The next range of EN 837-1 (from memory) that a pressure fills to three quarters at most (common practice). */
class GaugeRangeTest {

    @Test
    void leavesAQuarterOfTheRangeFree() {
        assertThat(GaugeRange.of(120)).hasValue(160);
        assertThat(GaugeRange.of(120.1)).hasValue(250);
        assertThat(GaugeRange.of(230)).hasValue(400);
        assertThat(GaugeRange.of(0.75)).hasValue(1);
        assertThat(GaugeRange.of(1.3)).hasValue(2.5);
    }

    @Test
    void isTheSmallestOfThem() {
        List<Double> ranges =
                List.of(1.0, 1.6, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 40.0, 60.0, 100.0, 160.0, 250.0, 400.0);
        for (int i = 1; i < ranges.size(); i++) {
            double justBeyond = ranges.get(i - 1) * 0.75 + 0.01;
            assertThat(GaugeRange.of(justBeyond)).hasValue(ranges.get(i));
        }
    }

    @Test
    void isNoneBeyondTheLargest() {
        assertThat(GaugeRange.of(750)).hasValue(1000);
        assertThat(GaugeRange.of(751)).isEmpty();
    }
}
