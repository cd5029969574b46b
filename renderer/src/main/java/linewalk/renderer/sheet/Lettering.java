package linewalk.renderer.sheet;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The one typeface of all prints, its sizes and its measures. */
public final class Lettering {

    /** As the font file calls itself. */
    static final String FAMILY = "Liberation Sans";
    /** Capital height over type size of the typeface. */
    public static final double CAP_HEIGHT = 1409.0 / 2048;
    /** No lettering of ours is smaller: 2.5 mm capital height is 7.09 pt. */
    public static final double TEXT_PT = 10.4;

    public static final double HEAD_PT = 12.5;
    public static final double LEADING_PT = 13;

    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
    private static final Font BASE = load();
    /** Widths are measured in thousandths of the size. */
    private static final Font THOUSANDTHS = BASE.deriveFont(1000f);

    private static final double[] ADVANCES = advances();
    /** Letters of Latin alphabets that are printed as they are. */
    private static final boolean[] PLAIN = plain();

    private Lettering() {}

    static InputStream open() {
        return PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf");
    }

    private static Font load() {
        try (InputStream in = open()) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the typeface cannot be read", e);
        }
    }

    static Font font(double sizePt) {
        return BASE.deriveFont((float) sizePt);
    }

    /** The typeface is set without kerning: a text is as wide as its letters. */
    public static double widthPt(String text, double sizePt) {
        String printed = printable(text);
        double width = 0;
        for (int i = 0; i < printed.length(); i++) {
            char c = printed.charAt(i);
            if (c >= ADVANCES.length) {
                return measured(printed) * sizePt / 1000;
            }
            width += ADVANCES[c];
        }
        return width * sizePt / 1000;
    }

    private static double measured(String printed) {
        return THOUSANDTHS.getStringBounds(printed, MEASURE).getWidth();
    }

    /** Of letters of Latin alphabets, in thousandths of the size. */
    private static double[] advances() {
        double[] advances = new double[0x180];
        for (char c = ' '; c < advances.length; c++) {
            advances[c] = measured(String.valueOf(c));
        }
        return advances;
    }

    private static boolean[] plain() {
        boolean[] plain = new boolean[ADVANCES.length];
        for (char c = ' '; c < plain.length; c++) {
            plain[c] = replaced(String.valueOf(c)).charAt(0) == c;
        }
        return plain;
    }

    /** Characters that the typeface lacks become a question mark rather than stop the print. */
    static String printable(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= PLAIN.length || !PLAIN[text.charAt(i)]) {
                return replaced(text);
            }
        }
        return text;
    }

    private static String replaced(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int c = text.codePointAt(i);
            if (Character.isWhitespace(c)) {
                out.append(' ');
            } else if (BASE.canDisplay(c) && !Character.isISOControl(c)) {
                out.appendCodePoint(c);
            } else {
                out.append('?');
            }
        }
        return out.toString();
    }

    /** Lines no wider than asked; a word that is itself wider is broken. */
    public static List<String> wrap(String text, double sizePt, double widthPt) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (widthPt(longer, sizePt) <= widthPt) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = breakWord(word, sizePt, widthPt, lines);
        }
        lines.add(line);
        return lines;
    }

    private static String breakWord(String word, double sizePt, double widthPt, List<String> lines) {
        String rest = word;
        while (rest.length() > 1 && widthPt(rest, sizePt) > widthPt) {
            int n = rest.length() - 1;
            while (n > 1 && widthPt(rest.substring(0, n), sizePt) > widthPt) {
                n--;
            }
            lines.add(rest.substring(0, n));
            rest = rest.substring(n);
        }
        return rest;
    }
}
