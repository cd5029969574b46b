package linewalk.importer.lettering;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Words end where the letter reader saw blanks, where it saw enough of them. */
class SeenBlanksTest {

    private static SeenBlanks seen(int times) {
        SeenBlanks seen = new SeenBlanks();
        for (int i = 0; i < times; i++) {
            seen.note(0.2, false);
            seen.note(0.4, true);
        }
        return seen;
    }

    @Test
    void fewTellNothing() {
        assertThat(seen(10).limit(0.5)).isEqualTo(0.5);
    }

    @Test
    void theLimitLiesBetweenWhatWasSeenTogetherAndApart() {
        assertThat(seen(30).limit(0.5)).isBetween(0.2, 0.4);
    }
}
