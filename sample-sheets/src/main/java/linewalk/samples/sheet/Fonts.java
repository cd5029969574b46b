package linewalk.samples.sheet;

import java.io.IOException;
import java.io.InputStream;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.Typeface;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/**
 * The two fonts of a style, and how wide they set a text.
 *
 * @param strokes what letters are drawn with instead, or null where they are a text layer
 */
record Fonts(PDFont regular, PDFont bold, double scale, StrokeFont strokes) {
    static Fonts of(PDDocument document, DraftingStyle style) throws IOException {
        StrokeFont strokes =
                switch (style.letters()) {
                    case TEXT -> null;
                    case NARROW -> StrokeFont.NARROW;
                    case ROUND -> StrokeFont.ROUND;
                };
        if (strokes != null) {
            return new Fonts(null, null, style.fontScale(), strokes);
        }
        return new Fonts(load(document, style.regular()), load(document, style.bold()), style.fontScale(), null);
    }

    private static PDFont load(PDDocument document, Typeface face) throws IOException {
        return switch (face) {
            case EMBEDDED_SANS -> embedded(document);
            case HELVETICA -> new PDType1Font(FontName.HELVETICA);
            case HELVETICA_BOLD -> new PDType1Font(FontName.HELVETICA_BOLD);
            case COURIER -> new PDType1Font(FontName.COURIER);
            case COURIER_BOLD -> new PDType1Font(FontName.COURIER_BOLD);
            case HELVETICA_OBLIQUE -> new PDType1Font(FontName.HELVETICA_OBLIQUE);
            case HELVETICA_BOLD_OBLIQUE -> new PDType1Font(FontName.HELVETICA_BOLD_OBLIQUE);
            case TIMES -> new PDType1Font(FontName.TIMES_ROMAN);
            case TIMES_BOLD -> new PDType1Font(FontName.TIMES_BOLD);
        };
    }

    private static PDFont embedded(PDDocument document) throws IOException {
        String file = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
        try (InputStream in = PDDocument.class.getResourceAsStream(file)) {
            return PDType0Font.load(document, in);
        }
    }

    PDFont font(boolean isBold) {
        return isBold ? bold : regular;
    }

    /** In the measure of {@code height}. */
    double width(String text, double height, boolean isBold) {
        if (strokes != null) {
            return strokes.width(text) * height * scale;
        }
        try {
            return font(isBold).getStringWidth(text) / 1000 * height * scale;
        } catch (IOException e) {
            throw new IllegalArgumentException("cannot set " + text, e);
        }
    }
}
