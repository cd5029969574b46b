package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import linewalk.drawing.Box;
import linewalk.drawing.Sheet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Letters and strokes of an original are found where they are displayed. */
class SourceReaderTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"0, 0", "90, 0", "0, 40", "90, 40"})
    void howeverThePageIsTurnedOrCropped(int rotation, double hiddenPt) throws IOException {
        Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), rotation, hiddenPt);
        Sheet sheet = bench.job().set().getSheet(Bench.page(1));
        try (PDDocument doc = Loader.loadPDF(bench.source.toFile())) {
            SourceReader.Marks marks = SourceReader.read(doc.getPage(0), sheet);
            // the pump's designation is written to the right of (200, 400)
            Box tag = SourceLetters.word("0P1", marks.letters(), Box.around(Bench.at(200, 400)), 60)
                    .orElseThrow();
            assertThat(tag.distancePt(Bench.at(230, 397))).isLessThan(3);
            // the line from the pump runs straight up from (200, 375)
            assertThat(marks.ink()).anyMatch(l -> l.ptSegDist(200, 240) < 0.5 && l.ptSegDist(200, 370) < 0.5);
        }
    }
}
