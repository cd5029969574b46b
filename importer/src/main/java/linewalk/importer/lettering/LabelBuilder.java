package linewalk.importer.lettering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.page.Glyph;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/**
 * Glyphs to labels. Needs glyphs in any order, printed one by one or in words, at any angle; leaves labels whose letters
 * stand on one baseline with gaps of at most about one letter. Letters printed twice on one place (a way to print bold)
 * count once.
 */
public final class LabelBuilder {

    /** Gaps as shares of the font size. */
    private static final double WORD_GAP = 0.17;

    private static final double LABEL_GAP = 0.9;
    private static final double SAME_PLACE = 0.12;
    private static final double BASELINE = 0.2;

    /** A designation and the smaller remark behind it are two labels. */
    private static final double SAME_SIZE = 0.9;

    /** Height of capitals in common lettering, as a share of the font size. */
    public static final double CAP_HEIGHT = 0.72;

    /** The largest figure of which the edge parts two labels, in font sizes: the circle of a letter, a flag. */
    private static final double RING = 6;

    private final Near<Stroke> rings;

    private LabelBuilder(List<Stroke> strokes) {
        rings = new Near<>(strokes.stream().filter(Stroke::closed).toList(), Stroke::box);
    }

    /** A glyph seen along its own baseline. */
    private record Placed(Glyph glyph, double along, double across) {
        static Placed of(Glyph g) {
            double a = Math.toRadians(g.angleDeg());
            double c = Math.cos(a);
            double s = Math.sin(a);
            Point p = g.start();
            return new Placed(g, p.xPt() * c + p.yPt() * s, -p.xPt() * s + p.yPt() * c);
        }

        double end() {
            return along + glyph.advancePt();
        }
    }

    public static List<Label> labels(List<Glyph> glyphs) {
        return labels(glyphs, List.of());
    }

    /** @param strokes of which the edges of closed ones may stand between a letter and what is printed beside them */
    public static List<Label> labels(List<Glyph> glyphs, List<Stroke> strokes) {
        LabelBuilder builder = new LabelBuilder(strokes);
        Map<Long, List<Placed>> byAngle = new TreeMap<>();
        for (Glyph g : glyphs) {
            if (g.sizePt() > 0.5) {
                byAngle.computeIfAbsent(Math.round(g.angleDeg()) % 360, k -> new ArrayList<>())
                        .add(Placed.of(g));
            }
        }
        List<Label> labels = new ArrayList<>();
        byAngle.values().forEach(turned -> builder.baselines(turned, labels));
        return labels;
    }

    private void baselines(List<Placed> glyphs, List<Label> labels) {
        glyphs.sort(Comparator.comparingDouble(Placed::across));
        int from = 0;
        for (int i = 1; i <= glyphs.size(); i++) {
            if (i == glyphs.size()
                    || glyphs.get(i).across() - glyphs.get(i - 1).across()
                            > BASELINE * glyphs.get(i).glyph().sizePt()) {
                List<Placed> line = new ArrayList<>(glyphs.subList(from, i));
                line.sort(Comparator.comparingDouble(Placed::along));
                split(line, labels);
                from = i;
            }
        }
    }

    private void split(List<Placed> line, List<Label> labels) {
        List<Placed> run = new ArrayList<>();
        for (Placed p : line) {
            Placed last = run.isEmpty() ? null : run.get(run.size() - 1);
            if (last != null && overprint(last, p)) {
                continue;
            }
            if (last != null && !continues(last, p)) {
                add(run, labels);
                run.clear();
            }
            run.add(p);
        }
        add(run, labels);
    }

    private static boolean overprint(Placed a, Placed b) {
        return a.glyph().text().equals(b.glyph().text())
                && Math.abs(a.along() - b.along()) < SAME_PLACE * a.glyph().sizePt();
    }

    private boolean continues(Placed a, Placed b) {
        double size = Math.max(a.glyph().sizePt(), b.glyph().sizePt());
        double smaller = Math.min(a.glyph().sizePt(), b.glyph().sizePt());
        double gap = b.along() - a.end();
        return smaller > SAME_SIZE * size
                && gap < LABEL_GAP * size
                && gap > -0.6 * size
                && !(gap > WORD_GAP * size && parted(a.glyph(), b.glyph(), size));
    }

    /** One of them ends within a figure, and the other begins outside. */
    private boolean parted(Glyph a, Glyph b, double sizePt) {
        Box gap = Box.around(a.end()).union(Box.around(b.start()));
        return rings.touching(gap).stream()
                .map(Stroke::box)
                .filter(r -> Math.max(r.widthPt(), r.heightPt()) < RING * sizePt)
                .anyMatch(r -> r.contains(a.end()) != r.contains(b.start()));
    }

    private static void add(List<Placed> run, List<Label> labels) {
        List<Label.Word> words = new ArrayList<>();
        List<List<Glyph>> glyphs = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        List<Placed> letters = new ArrayList<>();
        Placed last = null;
        for (Placed p : run) {
            boolean blank = p.glyph().text().isBlank();
            if (blank
                    || (last != null
                            && p.along() - last.end() > WORD_GAP * p.glyph().sizePt())) {
                flush(word, letters, words, glyphs);
            }
            if (!blank) {
                word.append(p.glyph().text());
                letters.add(p);
            }
            last = p;
        }
        flush(word, letters, words, glyphs);
        if (!words.isEmpty()) {
            labels.add(label(words, glyphs, run.get(0).glyph()));
        }
    }

    private static Label label(List<Label.Word> words, List<List<Glyph>> glyphs, Glyph first) {
        Box box = words.get(0).box();
        StringBuilder text = new StringBuilder();
        for (Label.Word w : words) {
            box = box.union(w.box());
            text.append(text.length() == 0 ? "" : " ").append(w.text());
        }
        return new Label(text.toString(), box, first.sizePt(), first.angleDeg(), words, Readings.of(glyphs));
    }

    private static void flush(
            StringBuilder word, List<Placed> letters, List<Label.Word> words, List<List<Glyph>> glyphs) {
        if (letters.isEmpty()) {
            return;
        }
        glyphs.add(letters.stream().map(Placed::glyph).toList());
        List<Point> corners = new ArrayList<>();
        for (Placed p : letters) {
            Glyph g = p.glyph();
            double a = Math.toRadians(g.angleDeg());
            double upX = Math.sin(a);
            double upY = -Math.cos(a);
            // a little below the baseline too
            for (Point end : List.of(g.start(), g.end())) {
                corners.add(end.plus(CAP_HEIGHT * g.sizePt() * upX, CAP_HEIGHT * g.sizePt() * upY));
                corners.add(end.plus(-0.02 * g.sizePt() * upX, -0.02 * g.sizePt() * upY));
            }
        }
        words.add(new Label.Word(word.toString(), Box.around(corners)));
        word.setLength(0);
        letters.clear();
    }
}
