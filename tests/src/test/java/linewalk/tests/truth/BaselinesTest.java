package linewalk.tests.truth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The ratchet itself: what has no baseline fails, what is worse fails, what is better is told. */
class BaselinesTest {

    private final Baselines baselines = new Baselines(new ByteArrayInputStream(
            "set,figure,baseline\npress,pairs.recall,0.900\npress,silent.mates,1\n".getBytes(StandardCharsets.UTF_8)));

    @Test
    void theSameFiguresAreFine() {
        Map<String, Double> same = Map.of("pairs.recall", 0.8996, "silent.mates", 1.0);
        assertThat(baselines.faults("press", same)).isEmpty();
        assertThat(baselines.gains("press", same)).isEmpty();
    }

    @Test
    void worseFiguresAreFaults() {
        assertThat(baselines.faults("press", Map.of("pairs.recall", 0.899, "silent.mates", 2.0)))
                .containsExactly(
                        "press,pairs.recall,0.899 is worse than the baseline 0.9",
                        "press,silent.mates,2.000 is worse than the baseline 1.0");
    }

    @Test
    void aMissingBaselineIsAFaultAndSoIsAFigureThatIsGone() {
        assertThat(baselines.faults("press", Map.of("pairs.recall", 0.9, "ports.f1", 1.0)))
                .containsExactly(
                        "press,ports.f1,1.000 has no baseline",
                        "press, silent.mates has a baseline and is no longer measured");
        assertThat(baselines.faults("another", Map.of("ports.f1", 1.0))).hasSize(1);
    }

    @Test
    void betterFiguresAreTold() {
        assertThat(baselines.gains("press", Map.of("pairs.recall", 0.95, "silent.mates", 0.0)))
                .containsExactlyInAnyOrder("press,pairs.recall,0.950", "press,silent.mates,0.000");
    }
}
