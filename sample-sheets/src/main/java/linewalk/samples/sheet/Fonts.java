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
 * @param strokes what letters are drawn with instead where there is no font, else null
 * @param outlined letters are painted as the outlines of their font
 */
record Fonts(PDFont regular, PDFont bold, double scale, StrokeFont strokes, boolean outlined) {
    static Fonts of(PDDocument document, DraftingStyle style) throws IOException {
        double scale = style.fontScale();
        return switch (style.letters()) {
            case TEXT -> new Fonts(load(document, style.regular()), load(document, style.bold()), scale, null, false);
            case NARROW -> new Fonts(null, null, scale, StrokeFont.NARROW, false);
            case ROUND -> new Fonts(null, null, scale, StrokeFont.ROUND, false);
            case OUTLINE -> {
                PDFont face = embedded(document);
                yield new Fonts(face, face, scale, null, true);
            }
            case PART -> new Fonts(null, load(document, style.bold()), scale, StrokeFont.ROUND, false);
        };
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
        if (font(isBold) == null) {
            return strokes.width(text) * height * scale;
        }
        try {
            return font(isBold).getStringWidth(text) / 1000 * height * scale;
        } catch (IOException e) {
            throw new IllegalArgumentException("cannot set " + text, e);
        }
    }
}
