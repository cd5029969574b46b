package linewalk.linker;

import static linewalk.linker.Drawn.findings;
import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.HandTag;
import org.junit.jupiter.api.Test;

/** A mate that is not sure is told, so that a person can settle it. */
class DoubtfulMateTest {

    private static final String THIN = """
            sheet 1
            ref a B4 > 2/C1
            sheet 2
            ref b C1 > 1
            """;

    @Test
    void oneEndWithoutZoneAndNoLabels() {
        assertThat(findings(Drawn.of(THIN).link())).containsExactly("doubtful-join a b");
    }

    @Test
    void settledByHand() {
        HandTag tie = new HandTag.OfMate(null, 1, 350, 150, null, null, 2, 50, 250, null, null);
        assertThat(findings(Drawn.of(THIN).tag(tie).link())).isEmpty();
    }
}
