package linewalk.importer.stroke;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Glyph;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Stroke;

/** A page on which letters are drawn, as strokes or as painted outlines. */
final class Written {

    /** Rows of points, x 0 to 4, y 0 (baseline) to 6; an alphabet of the test's own. */
    private static final Map<Character, String> LETTERS = Map.ofEntries(
            Map.entry('A', "002640 1232"),
            Map.entry('B', "00063645443303 3342413000"),
            Map.entry('D', "00062644422000"),
            Map.entry('E', "46060040 0333"),
            Map.entry('H', "0006 4046 0343"),
            Map.entry('I', "0006"),
            Map.entry('L', "060040"),
            Map.entry('M', "0006234640"),
            Map.entry('N', "00064046"),
            Map.entry('O', "100105163645413010"),
            Map.entry('P', "00063645443303"),
            Map.entry('R', "00063645443303 2340"),
            Map.entry('S', "453616050413334241301001"),
            Map.entry('T', "0646 2620"),
            Map.entry('U', "060110304146"),
            Map.entry('V', "062046"),
            Map.entry('1', "142620"),
            Map.entry('2', "051636453400 0040"),
            Map.entry('3', "05163645443313 3342413010"),
            Map.entry('4', "30360242"),
            Map.entry('7', "064610"),
            Map.entry('/', "0046"),
            Map.entry('-', "0333"),
            Map.entry('.', "2030312120"));

    /** From letter to letter, in sixths of a capital's height, where all have the same room. */
    private static final int PITCH = 6;

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Fill> fills = new ArrayList<>();
    private final List<Glyph> glyphs = new ArrayList<>();

    /** Capitals {@code highPt} high on a baseline that starts at x, y. */
    Written text(double xPt, double yPt, double highPt, double deg, String text) {
        return text(xPt, yPt, highPt, deg, text, false);
    }

    /** An I has as much room as an M, and so has a blank. */
    Written pitched(double xPt, double yPt, double highPt, double deg, String text) {
        return text(xPt, yPt, highPt, deg, text, true);
    }

    private Written text(double xPt, double yPt, double highPt, double deg, String text, boolean fixed) {
        Turn turn = Turn.of(deg);
        double u = turn.along(new Point(xPt, yPt));
        double v = turn.down(new Point(xPt, yPt));
        double unit = highPt / 6;
        for (char c : text.toCharArray()) {
            int widest = 2;
            int shift = fixed && c == 'I' ? 2 : 0;
            for (String s : c == ' ' ? new String[0] : LETTERS.get(c).split(" ")) {
                List<Point> points = new ArrayList<>();
                for (int i = 0; i + 1 < s.length(); i += 2) {
                    int x = s.charAt(i) - '0';
                    widest = Math.max(widest, x);
                    points.add(turn.back(u + (x + shift) * unit, v - (s.charAt(i + 1) - '0') * unit));
                }
                strokes.add(new Stroke(points, false, false, highPt / 12, Dash.SOLID, false));
            }
            u += (fixed ? PITCH : widest + 1.5) * unit;
        }
        return this;
    }

    /** The same as painted outlines of a text face. */
    Written painted(double xPt, double yPt, double highPt, String text) {
        Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 100);
        FontRenderContext frc = new FontRenderContext(null, true, true);
        double scale =
                highPt / font.createGlyphVector(frc, "H").getVisualBounds().getHeight();
        GlyphVector line = font.createGlyphVector(frc, text);
        AffineTransform to = AffineTransform.getTranslateInstance(xPt, yPt);
        to.scale(scale, scale);
        List<Point> points = new ArrayList<>();
        double[] p = new double[6];
        for (PathIterator it = line.getOutline().getPathIterator(to, 0.05); !it.isDone(); it.next()) {
            if (it.currentSegment(p) == PathIterator.SEG_CLOSE) {
                fills.add(new Fill(points, true, false));
                points = new ArrayList<>();
            } else {
                points.add(new Point(p[0], p[1]));
            }
        }
        return this;
    }

    Written line(double penPt, double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        strokes.add(new Stroke(points, false, false, penPt, Dash.SOLID, false));
        return this;
    }

    Written fill(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        fills.add(new Fill(points, true, false));
        return this;
    }

    Written told(double xPt, double yPt, double sizePt, String text) {
        for (int i = 0; i < text.length(); i++) {
            Point at = new Point(xPt + i * sizePt * 0.6, yPt);
            glyphs.add(new Glyph(text.substring(i, i + 1), at, sizePt * 0.6, sizePt, 0));
        }
        return this;
    }

    Marks marks() {
        return new Marks(1684, 1190, strokes, fills, glyphs, List.of());
    }

    Marks read() {
        try (LetterReader reader = LetterReader.lazy()) {
            LetterBook.Maker maker = new LetterBook.Maker();
            maker.add(marks());
            return new StrokeLettering(reader, () -> maker.make(reader)).read(marks());
        }
    }

    static List<String> texts(Marks marks) {
        return LabelBuilder.labels(marks.glyphs()).stream().map(Label::text).toList();
    }
}
