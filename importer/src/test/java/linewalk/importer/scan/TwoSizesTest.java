package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.ocr.Crop;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.ocr.ReadLetter;
import org.junit.jupiter.api.Test;

/** A coil's small name beside its valve's large one is read by itself where both in one row cannot be read. */
class TwoSizesTest {

    /** Takes every sign for an H, and reads badly what is much smaller than the largest of its line. */
    private static final class OneSize implements LetterReader {
        @Override
        public List<ReadLetter> line(Crop crop) {
            List<int[]> signs = signs(crop);
            int largest = signs.stream().mapToInt(s -> s[3] - s[2]).max().orElse(0);
            return signs.stream()
                    .map(s -> new ReadLetter(
                            s[0],
                            s[2],
                            s[1],
                            s[3],
                            false,
                            List.of(new ReadLetter.Option("H", s[3] - s[2] > 0.85 * largest ? 0.95 : 0.1))))
                    .toList();
        }

        /** Left, right, top and bottom of what blank columns part. */
        private static List<int[]> signs(Crop crop) {
            List<int[]> signs = new ArrayList<>();
            int[] open = null;
            for (int x = 0; x < crop.widthPx(); x++) {
                boolean any = false;
                for (int y = 0; y < crop.heightPx(); y++) {
                    if ((crop.grey()[y * crop.widthPx() + x] & 255) < 128) {
                        any = true;
                        open = open == null ? new int[] {x, x, y, y} : open;
                        open[1] = x + 1;
                        open[2] = Math.min(open[2], y);
                        open[3] = Math.max(open[3], y + 1);
                    }
                }
                if (!any && open != null) {
                    signs.add(open);
                    open = null;
                }
            }
            return signs;
        }

        @Override
        public void close() {}
    }

    @Test
    void bothAreRead() {
        Sketch sketch = new Sketch()
                .text("HHHHHHHH", 200, 200, 60)
                .text("HHHHHHHH", 200, 300, 60)
                .text("EE", 400, 500, 42)
                .text("HHH", 486, 503, 60);
        List<String> texts = LabelBuilder.labels(
                        Sketch.read(sketch.grey(), new OneSize()).marks().glyphs())
                .stream()
                .map(Label::text)
                .toList();
        assertThat(texts).containsExactlyInAnyOrder("HHHHHHHH", "HHHHHHHH", "HH", "HHH");
    }
}
