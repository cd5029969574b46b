package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sizes of ISO 216 in millimetres, of ASME Y14.1 in inches; both from memory. */
class PaperTest {

    @ParameterizedTest
    @CsvSource({"A4, 297, 210", "A3, 420, 297", "A2, 594, 420", "A1, 841, 594", "A0, 1189, 841"})
    void seriesA(Paper paper, double widthMm, double heightMm) {
        assertThat(paper.widthPt() / 72 * 25.4).isEqualTo(widthMm, within(0.001));
        assertThat(paper.heightPt() / 72 * 25.4).isEqualTo(heightMm, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"LETTER, 11, 8.5", "TABLOID, 17, 11", "ANSI_C, 22, 17", "ANSI_D, 34, 22", "ANSI_E, 44, 34"})
    void seriesAnsi(Paper paper, double widthIn, double heightIn) {
        assertThat(paper.widthPt() / 72).isEqualTo(widthIn, within(1e-9));
        assertThat(paper.heightPt() / 72).isEqualTo(heightIn, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void printsUprightTooWithNothingBelowTheReadableSize(Paper paper) throws IOException {
        Bench bench = new Bench().roundTrip();
        bench.paper = paper;
        bench.turn = Turn.PORTRAIT;
        byte[] pdf = Prints.print(bench.job(), "upright-" + paper);
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            PDRectangle page = doc.getPage(0).getMediaBox();
            assertThat((double) page.getWidth()).isEqualTo(paper.heightPt(), within(0.01));
            assertThat((double) page.getHeight()).isEqualTo(paper.widthPt(), within(0.01));
        }
        assertThat(Prints.capHeightsMm(pdf)).hasSizeGreaterThan(500).allMatch(mm -> mm >= 2.5);
        assertThat(Prints.text(pdf)).contains("Parts on this path", "12. Ends at TANK");
    }
}
