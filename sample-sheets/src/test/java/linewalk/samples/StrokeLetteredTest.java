package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.sheet.DrawnText;
import linewalk.samples.sheet.SetDrawing;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.Grid;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The demo with its letters drawn: the same texts in the same sheets, and no text layer. */
class StrokeLetteredTest {
    private static final double POINTS_A_MM = 72 / 25.4;
    static final List<DraftingStyle> STYLES = DraftingStyle.STROKE_LETTERED;

    @ParameterizedTest
    @FieldSource("STYLES")
    void thereIsNoTextLayer(DraftingStyle style) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new SetDrawing(DemoSet.machine(style), style).write(out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(new PDFTextStripper().getText(document)).isBlank();
        }
    }

    @ParameterizedTest
    @FieldSource("STYLES")
    void theTextsAreThoseOfTheStyleWithATextLayer(DraftingStyle style) throws IOException {
        String plain = style.name().substring(0, style.name().indexOf('-'));
        assertThat(texts(style)).isEqualTo(texts(DraftingStyle.named(plain)));
    }

    @ParameterizedTest
    @FieldSource("STYLES")
    void everythingStandsInTheFrame(DraftingStyle style) throws IOException {
        Grid grid = style.grid();
        double strip = grid.stripMm();
        for (DrawnSheet sheet : sheets(style)) {
            assertThat(sheet.texts())
                    .allMatch(t -> t.box().x0Pt() > (grid.leftMm() - strip) * POINTS_A_MM
                            && t.box().x1Pt() < (grid.rightMm() + strip) * POINTS_A_MM);
        }
    }

    private static List<String> texts(DraftingStyle style) throws IOException {
        return sheets(style).stream()
                .flatMap(s -> s.texts().stream())
                .filter(t -> t.role() != DrawnText.Role.REFERENCE)
                .map(DrawnText::text)
                .toList();
    }

    private static List<DrawnSheet> sheets(DraftingStyle style) throws IOException {
        return new SetDrawing(DemoSet.machine(style), style).write(new ByteArrayOutputStream());
    }
}
