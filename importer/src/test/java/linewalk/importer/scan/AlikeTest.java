package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.struct.image.GrayU8;
import java.util.List;
import java.util.stream.IntStream;
import linewalk.importer.lettering.Cell;
import linewalk.importer.ocr.ReadLetter;
import linewalk.importer.ocr.ReadLetter.Option;
import org.junit.jupiter.api.Test;

/** Signs that look alike: what several were read as, the next one is. */
class AlikeTest {

    private final GrayU8 grey = drawn();

    private final List<Blob> ink = Blobs.of(Ink.of(grey.clone()));

    /** No two letters lie alike on the pixels. */
    private static GrayU8 drawn() {
        Sketch sketch = new Sketch();
        for (int i = 0; i < 5; i++) {
            sketch.text("E", 200 + 80.3 * i, 300, 60);
        }
        return sketch.text("F", 620, 300, 60)
                .text("E", 800.2, 300, 60)
                .text("F", 880.4, 300, 60)
                .grey();
    }

    private Seen row(int fromX, int toX) {
        List<Blob> blobs = ink.stream()
                .filter(b -> b.x0() > fromX && b.x1() < toX && b.y0() > 200 && b.y1() < 400)
                .toList();
        Upright page = Upright.of(new Tilt(0, 0), grey.width, grey.height);
        return Seen.of(new TextRow(blobs, true, Cell.NONE), grey, page, 0);
    }

    private static ReadLetter read(Option... options) {
        return new ReadLetter(0, 0, 1, 1, false, List.of(options));
    }

    @Test
    void whatSeveralWereReadAsIsKnown() {
        Seen many = row(190, 700);
        Seen next = row(790, 860);
        Alike alike = Alike.on(many.glimpses());
        alike.note(
                many,
                IntStream.range(0, 6)
                        .mapToObj(i -> read(new Option(i < 5 ? "E" : "F", 0.9)))
                        .toList());

        assertThat(alike.known(next)).extracting(ReadLetter::text).containsExactly("E");
        assertThat(alike.known(row(790, 950))).as("only one F was seen").isNull();
    }

    @Test
    void othersWeighWhatASignWasReadAs() {
        Seen many = row(190, 700);
        Seen next = row(790, 860);
        Alike alike = Alike.on(many.glimpses());
        alike.note(
                many,
                IntStream.range(0, 6)
                        .mapToObj(i -> read(new Option(i < 5 ? "E" : "F", 0.9)))
                        .toList());

        ReadLetter weighed = alike.weighed(next.glimpses().get(0), read(new Option("F", 0.5), new Option("E", 0.4)));

        assertThat(weighed.text()).isEqualTo("E");
    }
}
