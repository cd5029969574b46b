package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Letters that look alike, told apart by the word they stand in. */
class SpellingTest {

    /** ISO 1219-2: circuit number, one letter for the class, number of the part; I and O are left out. */
    @ParameterizedTest
    @CsvSource({"0VI1, 0V11", "0VI, 0V1", "1VI2, 1V12", "O1V2, O1V2", "OV2, 0V2", "YO, Y0", "1Vl, 1V1"})
    void designationsHoldNoI(String read, String spelled) {
        assertThat(Spelling.word(read)).isEqualTo(spelled);
    }

    @ParameterizedTest
    @CsvSource({"OIL", "VITON", "MIN", "ISO", "DIN"})
    void wordsStayAsTheyAre(String word) {
        assertThat(Spelling.word(word)).isEqualTo(word);
    }
}
