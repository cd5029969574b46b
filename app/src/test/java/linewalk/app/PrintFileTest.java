package linewalk.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import linewalk.drawing.UserError;
import linewalk.renderer.sheet.Medium;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A file's ending tells what a print is written as. */
class PrintFileTest {

    @ParameterizedTest
    @CsvSource({"raise.pdf, PDF", "raise.SVG, SVG", "out/raise.v2.png, PNG"})
    void formatByEnding(Path path, Medium.Format format) {
        assertThat(PrintFile.of(path, null).medium()).isEqualTo(new Medium(format, 150));
    }

    @ParameterizedTest
    @ValueSource(strings = {"raise.docx", "raise", ".png", "pdf", "/"})
    void noFormat(Path path) {
        assertThatThrownBy(() -> PrintFile.of(path, null))
                .isInstanceOf(UserError.class)
                .hasMessage("prints are PDF, SVG or PNG files: name one such as " + path + ".pdf");
    }

    @Test
    void resolutionOfAPicture() {
        assertThat(PrintFile.of(Path.of("raise.png"), 600).medium().dpi()).isEqualTo(600);
    }

    @ParameterizedTest
    @ValueSource(ints = {49, 601, -1, 0})
    void resolutionOfNoUse(int dpi) {
        assertThatThrownBy(() -> PrintFile.of(Path.of("raise.png"), dpi))
                .isInstanceOf(UserError.class)
                .hasMessage("--dpi wants a number of 50 to 600");
    }

    @Test
    void resolutionOfWhatHasNoDots() {
        assertThatThrownBy(() -> PrintFile.of(Path.of("raise.svg"), 300))
                .isInstanceOf(UserError.class)
                .hasMessageContaining("SVG, which has no dots: name a file such as raise.png");
    }

    @Test
    void furtherFilesAreNumbered() {
        PrintFile file = PrintFile.of(Path.of("out/raise.v2.png"), null);
        assertThat(file.numbered(1)).isEqualTo(Path.of("out/raise.v2.png"));
        assertThat(file.numbered(3)).isEqualTo(Path.of("out/raise.v2-3.png"));
    }
}
