package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.Readings;
import linewalk.importer.page.Glyph;

/**
 * Words as they were printed, letter after letter. Where a number is printed over a name, the letters in order of place
 * make neither; in order of printing they are two words.
 */
final class PrintedWords {

    /** How far a letter may stand from the end of the one before, in letter sizes. */
    private static final double GAP = 0.2;

    private PrintedWords() {}

    /** @param glyphs in order of printing */
    static List<Label> of(List<Glyph> glyphs) {
        List<Label> words = new ArrayList<>();
        List<Glyph> word = new ArrayList<>();
        for (Glyph g : glyphs) {
            if (g.text().isBlank() || !word.isEmpty() && !follows(word.get(word.size() - 1), g)) {
                flush(word, words);
            }
            if (!g.text().isBlank() && g.sizePt() > 0.5) {
                word.add(g);
            }
        }
        flush(word, words);
        return words;
    }

    private static boolean follows(Glyph a, Glyph b) {
        return Math.abs(a.angleDeg() - b.angleDeg()) < 1
                && Math.abs(a.sizePt() - b.sizePt()) < 0.1 * a.sizePt()
                && a.end().distancePt(b.start()) < GAP * a.sizePt();
    }

    private static void flush(List<Glyph> word, List<Label> words) {
        if (word.isEmpty()) {
            return;
        }
        StringBuilder text = new StringBuilder();
        List<Point> corners = new ArrayList<>();
        for (Glyph g : word) {
            text.append(g.text());
            double a = Math.toRadians(g.angleDeg());
            // as high as capital letters of common lettering
            double highPt = 0.72 * g.sizePt();
            for (Point p : List.of(g.start(), g.end())) {
                corners.add(p);
                corners.add(p.plus(highPt * Math.sin(a), -highPt * Math.cos(a)));
            }
        }
        Box box = Box.around(corners);
        Glyph first = word.get(0);
        Label.Word whole = new Label.Word(text.toString(), box);
        words.add(new Label(
                whole.text(), box, first.sizePt(), first.angleDeg(), List.of(whole), Readings.of(List.of(word))));
        word.clear();
    }
}
