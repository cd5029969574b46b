package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.struct.image.GrayU8;
import java.util.List;
import linewalk.importer.lettering.Cell;
import linewalk.importer.ocr.ReadLetter;
import linewalk.importer.ocr.ReadLetter.Option;
import org.junit.jupiter.api.Test;

/** Signs that look alike: what several were read as, the next one is. Rows of two letters, one below the other. */
class AlikeTest {

    private final GrayU8 grey = drawn();
    private final List<Blob> ink = Blobs.of(Ink.of(grey.clone()));
    private final Alike alike = Alike.on(row(200).glimpses());

    AlikeTest() {
        for (int y = 200; y < 500; y += 100) {
            alike.note(row(y), List.of(read(new Option("E", 0.9)), read(new Option("E", 0.9))));
        }
    }

    private static GrayU8 drawn() {
        Sketch sketch = new Sketch();
        for (int y = 200; y <= 500; y += 100) {
            sketch.text("E", 200, y, 60).text("E", 300, y, 60);
        }
        return sketch.text("E", 200, 600, 60).text("F", 300, 600, 60).grey();
    }

    private Seen row(int baseline) {
        List<Blob> blobs = ink.stream()
                .filter(b -> b.x0() > 190 && b.x1() < 400 && b.y0() > baseline - 60 && b.y1() < baseline + 20)
                .toList();
        Upright page = Upright.of(new Tilt(0, 0), grey.width, grey.height);
        return Seen.of(new TextRow(blobs, true, Cell.NONE), grey, page, 0, 0);
    }

    private static ReadLetter read(Option... options) {
        return new ReadLetter(0, 0, 1, 1, false, List.of(options));
    }

    @Test
    void whatSeveralWereReadAsIsKnown() {
        assertThat(alike.known(row(500))).extracting(ReadLetter::text).containsExactly("E", "E");
    }

    @Test
    void aLetterNotSeenBeforeIsNot() {
        assertThat(alike.known(row(600))).isNull();
    }

    @Test
    void othersSayWhatASignIsThatWasNotRead() {
        assertThat(alike.overlooked(row(500), 1).text()).isEqualTo("E");
        assertThat(alike.overlooked(row(600), 1)).isNull();
    }

    @Test
    void othersWeighWhatASignWasReadAs() {
        Glimpse one = row(500).glimpses().get(0);

        assertThat(alike.weighed(one, read(new Option("F", 0.5), new Option("E", 0.4)))
                        .text())
                .isEqualTo("E");
    }
}
