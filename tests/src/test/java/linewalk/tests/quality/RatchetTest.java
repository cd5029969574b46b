package linewalk.tests.quality;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The ratchet itself. */
class RatchetTest {

    private final Ratchet ratchet = new Ratchet(new ByteArrayInputStream(
            "print,figure,most\nlift,lines.bends,14\nlift,overlap.text-cutting,2\n".getBytes(StandardCharsets.UTF_8)));

    @Test
    void theSameFiguresAreFineAndBetterOnesAreTold() {
        Map<String, Double> same = Map.of("lines.bends", 14.0, "overlap.text-cutting", 2.0, "overlap.text-text", 0.0);
        assertThat(ratchet.faults("lift", same)).isEmpty();
        assertThat(ratchet.gains("lift", same)).isEmpty();
        assertThat(ratchet.gains("lift", Map.of("lines.bends", 13.0))).containsExactly("lift,lines.bends,13.000");
    }

    @Test
    void moreIsAFaultAndAnOverlapAlwaysIs() {
        assertThat(ratchet.faults(
                        "lift", Map.of("lines.bends", 15.0, "overlap.text-cutting", 3.0, "overlap.text-text", 1.0)))
                .containsExactly(
                        "lift,lines.bends,15.000 is more than 14.0",
                        "lift,overlap.text-cutting,3.000 is more than 2.0",
                        "lift,overlap.text-text,1.000 is more than 0.0");
    }

    @Test
    void smallCapitalsAreAFaultWithoutAnyRow() {
        assertThat(ratchet.faults("other", Map.of("capitals.mm", 2.49))).hasSize(1);
        assertThat(ratchet.faults("other", Map.of("capitals.mm", 2.5))).isEmpty();
    }

    @Test
    void aFigureWithoutRowIsAFaultAndSoIsOneThatIsGone() {
        assertThat(ratchet.faults("lift", Map.of("lines.mm", 900.0, "lines.bends", 14.0)))
                .containsExactly(
                        "lift,lines.mm,900.000 has no row",
                        "lift, overlap.text-cutting has a row and is no longer measured");
    }
}
