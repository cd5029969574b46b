package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Empty stretches are pulled together, kept ones stay true to scale. */
class BrokenAxisTest {

    private final BrokenAxis axis =
            new BrokenAxis(List.of(new double[] {300, 400}, new double[] {0, 100}, new double[] {90, 120}), 2, 60);

    @Test
    void keepsStretchesToScale() {
        assertThat(axis.map(0)).isZero();
        assertThat(axis.map(120)).isEqualTo(240);
        assertThat(axis.map(350) - axis.map(300)).isEqualTo(100);
    }

    @Test
    void pullsTheEmptyStretchTogether() {
        assertThat(axis.map(300) - axis.map(120)).isEqualTo(BrokenAxis.GAP_PT);
        assertThat(axis.map(210)).isBetween(240.0, 240.0 + BrokenAxis.GAP_PT);
        assertThat(axis.keeps(210)).isFalse();
    }

    @Test
    void runsOnBeyondItsEnds() {
        assertThat(axis.map(410) - axis.map(400)).isEqualTo(20);
        assertThat(axis.map(-10)).isEqualTo(-20);
    }
}
