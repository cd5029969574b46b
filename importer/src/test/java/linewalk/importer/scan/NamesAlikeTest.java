package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Of two ways to read a name, the one made like others of its page is the likelier one. */
class NamesAlikeTest {

    private static final NamesAlike PAGE = new NamesAlike(List.of("MP3", "MP4", "MP10", "MPI1", "1V1", "2V1", "1Z1"));

    @Test
    void aNameMadeLikeNoOtherIsUnlikely() {
        assertThat(PAGE.odds("MPI1", "MP11")).isEqualTo(4);
    }

    @Test
    void namesOfTheSameMakeAreAllAsLikely() {
        assertThat(PAGE.odds("MP3", "MP8")).isEqualTo(1);
    }

    /** The coils of one valve. */
    @Test
    void whateverLetterStandsBehindTheNumber() {
        assertThat(new NamesAlike(List.of("Y2", "Y3A", "Y3B")).odds("Y3A", "Y34"))
                .isEqualTo(1);
    }

    /** Where names begin with what a part is, none begins with the number of a circuit. */
    @Test
    void aNoughtBeforeLettersIsAnOWhereNoOtherNameBeginsSo() {
        assertThat(new NamesAlike(List.of("SV7", "DV10", "PG3", "LV1", "0R1")).odds("0R1", "OR1"))
                .isEqualTo(5);
        assertThat(new NamesAlike(List.of("0V5", "0V6", "MP1", "MP2", "MP3")).odds("0V5", "OV5"))
                .isEqualTo(1);
    }

    @Test
    void aMakeThatThePageDoesNotHaveIsUnlikely() {
        assertThat(PAGE.odds("1V1", "1Y1")).isEqualTo(0.5);
    }
}
