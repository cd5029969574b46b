package linewalk.samples.sheet;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.util.Matrix;

/**
 * An alphabet of single strokes, as drawing programs plot it. A letter is listed in a resource as its character and its
 * strokes; a stroke is a row of points, two digits each (x, y; baseline at 2, capitals up to 8), and a {@code ~} before
 * it has its corners rounded.
 *
 * @param column width of a grid column, as a share of the height of capitals; {@code gap} between letters, {@code blank}
 *     and {@code pen} in the same measure
 * @param lean how far a letter leans to the right, as a share of its height
 * @param onePath all strokes of a text are one path
 */
record StrokeFont(
        Map<Character, Letter> letters,
        double column,
        double gap,
        double blank,
        double pen,
        double lean,
        boolean onePath) {
    private static final double CAPITALS = 0.72;
    private static final double ROW = 1 / 6.0;
    private static final int BASELINE = 2;

    static final StrokeFont NARROW = read("narrow.strokes", 0.135, 0.24, 0.55, 0.075, 0, true);
    static final StrokeFont ROUND = read("round.strokes", 0.128, 0.26, 0.6, 0.1, Math.tan(Math.toRadians(15)), false);

    /** Strokes as rows of x, y in grid columns and rows above the baseline. */
    record Letter(List<double[]> strokes, double left, double right) {
        static Letter of(String... strokes) {
            List<double[]> out = new ArrayList<>();
            double left = 9;
            double right = 0;
            for (String s : strokes) {
                double[] xy = points(s.startsWith("~") ? s.substring(1) : s);
                for (int i = 0; i < xy.length; i += 2) {
                    left = Math.min(left, xy[i]);
                    right = Math.max(right, xy[i]);
                }
                out.add(s.startsWith("~") ? rounded(rounded(rounded(xy))) : xy);
            }
            return new Letter(List.copyOf(out), left, right);
        }

        private static double[] points(String digits) {
            double[] xy = new double[digits.length()];
            for (int i = 0; i < xy.length; i++) {
                xy[i] = digits.charAt(i) - '0' - (i % 2 == 0 ? 0 : BASELINE);
            }
            return xy;
        }

        /** Each corner cut at a quarter of its sides; the ends stay. */
        private static double[] rounded(double[] xy) {
            int pieces = xy.length / 2 - 1;
            double[] out = new double[4 * pieces];
            out[0] = xy[0];
            out[1] = xy[1];
            int o = 2;
            for (int i = 0; i < pieces; i++) {
                if (i > 0) {
                    o = between(xy, i, 0.25, out, o);
                }
                if (i < pieces - 1) {
                    o = between(xy, i, 0.75, out, o);
                }
            }
            out[o] = xy[2 * pieces];
            out[o + 1] = xy[2 * pieces + 1];
            return out;
        }

        private static int between(double[] xy, int piece, double share, double[] out, int o) {
            for (int i = 2 * piece; i < 2 * piece + 2; i++) {
                out[o + i - 2 * piece] = xy[i] + share * (xy[i + 2] - xy[i]);
            }
            return o + 2;
        }
    }

    private static StrokeFont read(
            String resource, double column, double gap, double blank, double pen, double lean, boolean onePath) {
        Map<Character, Letter> letters = new HashMap<>();
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(StrokeFont.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                letters.put(line.charAt(0), Letter.of(line.substring(2).split(" ")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new StrokeFont(Map.copyOf(letters), column, gap, blank, pen, lean, onePath);
    }

    private Letter letter(char c) {
        Letter letter = letters.get(c);
        if (letter == null) {
            throw new IllegalArgumentException("no strokes for '" + c + "'");
        }
        return letter;
    }

    /** Of a text, as a share of the font size. */
    double width(String text) {
        double width = 0;
        for (char c : text.toCharArray()) {
            width += c == ' ' ? blank : (letter(c).right() - letter(c).left()) * column + gap;
        }
        return Math.max(0, width - gap) * CAPITALS;
    }

    double pen(double sizePt, boolean bold) {
        return pen * CAPITALS * sizePt * (bold ? 1.5 : 1);
    }

    /** The strokes of each letter, with the text's baseline where {@code start} puts it. */
    List<List<double[]>> letters(String text, double sizePt, Matrix start) {
        List<List<double[]>> out = new ArrayList<>();
        double high = CAPITALS * sizePt;
        double along = 0;
        for (char c : text.toCharArray()) {
            if (c == ' ') {
                along += blank;
                continue;
            }
            Letter letter = letter(c);
            double from = along;
            out.add(letter.strokes().stream()
                    .map(s -> placed(s, from - letter.left() * column, high, start))
                    .toList());
            along += (letter.right() - letter.left()) * column + gap;
        }
        return out;
    }

    private double[] placed(double[] stroke, double from, double high, Matrix start) {
        double[] out = new double[stroke.length];
        for (int i = 0; i < stroke.length; i += 2) {
            double up = stroke[i + 1] * ROW;
            float x = (float) ((from + stroke[i] * column + lean * up) * high);
            java.awt.geom.Point2D.Float at = start.transformPoint(x, (float) (up * high));
            out[i] = at.x;
            out[i + 1] = at.y;
        }
        return out;
    }
}
