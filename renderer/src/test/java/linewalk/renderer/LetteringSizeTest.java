package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** No lettering of ours is smaller than 2.5 mm capital height, on any paper and in either look. */
class LetteringSizeTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(Paper.class)
    void isReadableAtArmsLength(Paper paper) {
        for (Look look : Look.values()) {
            Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), 0);
            bench.look = look;
            bench.paper = paper;
            List<Double> heights = Prints.capHeightsMm(Prints.print(bench.job(), "size-" + look + "-" + paper));
            assertThat(heights).hasSizeGreaterThan(500).allSatisfy(mm -> assertThat(mm)
                    .isGreaterThanOrEqualTo(2.5));
        }
    }
}
