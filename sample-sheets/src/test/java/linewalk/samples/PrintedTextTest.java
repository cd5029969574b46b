package linewalk.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.samples.sheet.Box;
import linewalk.samples.sheet.DrawnReference;
import linewalk.samples.sheet.DrawnSheet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The file itself says what the truth says, where it says so: read back by another program's eyes. */
class PrintedTextTest {
    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void referencesStandOnThePage(Demo demo) throws IOException {
        Map<Integer, List<Glyph>> glyphs = read(demo);
        for (DrawnSheet sheet : demo.sheets()) {
            for (DrawnReference drawn : sheet.references()) {
                String found = inside(glyphs.get(sheet.page()), drawn.textBox());
                assertThat(sorted(found))
                        .as(drawn.text() + " on page " + sheet.page())
                        .isEqualTo(sorted(drawn.text()));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("linewalk.samples.Demo#all")
    void designationsStandOnTheirPage(Demo demo) throws IOException {
        Map<Integer, List<Glyph>> glyphs = read(demo);
        for (JsonNode part : demo.list("components")) {
            double x = part.get("x").asDouble();
            double y = part.get("y").asDouble();
            double reach = part.get("tag").asText().equals("TANK")
                    ? 15 * demo.style().unitPt()
                    : 7 * demo.style().unitPt();
            Box near = new Box(x - reach, y - reach, x + reach, y + reach);
            assertThat(inside(glyphs.get(part.get("page").asInt()), near))
                    .contains(part.get("tag").asText());
        }
    }

    private record Glyph(String text, double xPt, double yPt) {}

    private static String inside(List<Glyph> glyphs, Box box) {
        StringBuilder out = new StringBuilder();
        double room = 1.5;
        for (Glyph glyph : glyphs) {
            if (glyph.xPt > box.x0Pt() - room
                    && glyph.xPt < box.x1Pt() + room
                    && glyph.yPt > box.y0Pt() - room
                    && glyph.yPt < box.y1Pt() + room) {
                out.append(glyph.text);
            }
        }
        return out.toString();
    }

    private static String sorted(String text) {
        return text.replace(" ", "")
                .chars()
                .sorted()
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static Map<Integer, List<Glyph>> read(Demo demo) throws IOException {
        Map<Integer, List<Glyph>> out = new HashMap<>();
        try (PDDocument document = Loader.loadPDF(demo.pdf().toFile())) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition position) {
                    if (!position.getUnicode().isBlank()) {
                        double unit = getCurrentPage().getUserUnit();
                        out.computeIfAbsent(getCurrentPageNo(), page -> new ArrayList<>())
                                .add(new Glyph(position.getUnicode(), position.getX() * unit, position.getY() * unit));
                    }
                }
            }.getText(document);
        }
        return out;
    }
}
