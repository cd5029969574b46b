package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import linewalk.samples.machine.Net;
import linewalk.samples.random.FreeTexts;
import linewalk.samples.random.RandomSet;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.style.DraftingStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Random circuits are drawn with care, differ by seed and come out the same for one seed. */
class RandomSheetsTest {
    static final List<DraftingStyle> STYLES = DraftingStyle.ALL;

    @ParameterizedTest
    @FieldSource("STYLES")
    void textsStandFree(DraftingStyle style) throws IOException {
        List<DrawnSheet> sheets = RandomSet.of(style, 1, 12).write(new ByteArrayOutputStream());

        assertThat(sheets.stream().filter(sheet -> !FreeTexts.faults(sheet).isEmpty()))
                .hasSizeLessThanOrEqualTo(1);
    }

    @Test
    void circuitsAreOfSomeSize() throws IOException {
        List<DrawnSheet> sheets = RandomSet.of(DraftingStyle.ISO, 2, 12).write(new ByteArrayOutputStream());

        assertThat(sheets.stream().mapToInt(s -> s.plan().parts().size()).sum()).isGreaterThan(96);
        assertThat(sheets.stream().flatMap(s -> s.plan().nets().stream()).map(Net::ends))
                .anyMatch(ends -> ends.size() > 3)
                .allMatch(ends -> ends.size() >= 2);
        assertThat(sheets).allMatch(s -> s.plan().parts().size() <= 25);
    }

    @Test
    void oneSeedIsOneDrawing() throws IOException {
        assertThat(bytes(3)).isEqualTo(bytes(3)).isNotEqualTo(bytes(4));
    }

    private static byte[] bytes(long seed) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        RandomSet.of(DraftingStyle.HOPS, seed, 2).write(out);
        return out.toByteArray();
    }
}
