package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.importer.lettering.Cell;
import linewalk.importer.ocr.ReadLetter;

/**
 * A row of text as read in one direction.
 *
 * @param turn quarter turns, clockwise, that bring the row upright on the upright page
 */
record ReadRow(TextRow row, Upright upright, int turn, double cap, double baseline, List<Letter> letters) {

    /** A letter and where it stands along the row, in the row's upright pixels. */
    record Letter(
            String text, double likelihood, double x0, double x1, boolean afterBlank, List<ReadLetter.Option> options) {

        /** How sure it is that a letter stands here, whichever it is. */
        double sure() {
            return options.stream().mapToDouble(ReadLetter.Option::likelihood).reduce(likelihood, Math::max);
        }

        /** Another letter of the same look, so as likely as what was read. */
        Letter spelled(String other) {
            return new Letter(other, Math.max(likelihood, saying(other).likelihood()), x0, x1, afterBlank, options);
        }

        /** Something else than what looked most likely at first. */
        Letter saying(String other) {
            double known = options.stream()
                    .filter(o -> o.text().equals(other))
                    .mapToDouble(ReadLetter.Option::likelihood)
                    .findFirst()
                    .orElse(likelihood);
            return new Letter(other, known, x0, x1, afterBlank, options);
        }
    }

    /** A gap of this many letter heights is a blank even where none was read, and below the lesser none. */
    private static final double BLANK = 0.62;

    private static final double NO_BLANK = 0.2;

    /** Between broad signs a blank that was not read shows from here on, where others stand much closer. */
    private static final double OVERLOOKED = 0.42;

    private static final double MUCH = 2.5;

    /** A figure one and the like, in letter heights. */
    private static final double SLIM = 0.4;
    /** Figures of the usual typefaces follow each other at less, and with a blank between at more. */
    private static final double PITCH = 0.92;

    /** How much further a slash leans than the letters beside it: inclined lettering leans by 15 degrees (ISO 3098). */
    private static final double SLASH = 0.1;

    /** What no word begins or ends with, but for those before the parts of a designation (ISO/IEC 81346). */
    private static final Set<String> MARKS = Set.of("'", "\"", "*", "`", "^", "~", "|", "°");

    /** Share of the capitals' height that a small letter does not reach. */
    private static final double TALL = 0.88;

    /** How far a letter hangs below the line at least, in its own heights. */
    static final double HANGS = 0.12;

    /** @param read for every sign of the row, null where it was read as nothing */
    static ReadRow of(Seen seen, List<ReadLetter> read) {
        RowImage image = seen.image();
        double cap = image.cap() / image.scale();
        double baseline = image.y(image.baseline());
        List<Letter> letters = letters(read, seen.straight(), seen.row().cell(), cap, baseline);
        return Spelling.corrected(new ReadRow(seen.row(), seen.upright(), seen.turn(), cap, baseline, letters));
    }

    /** What was read as nothing is a speck. */
    private static List<Letter> letters(
            List<ReadLetter> read, List<Sign> signs, Cell cell, double cap, double baseline) {
        List<Letter> letters = new ArrayList<>();
        List<Sign> said = new ArrayList<>();
        Sign last = null;
        double lean = lean(signs);
        double least = leastGap(signs, cell, cap);
        for (int i = 0; i < signs.size(); i++) {
            ReadLetter l = read.get(i);
            if (l != null) {
                Sign s = signs.get(i);
                boolean blank = last != null && blank(last, s, l.afterBlank(), cell, cap, least);
                String text = byShape(l.text(), s, lean, cap, baseline);
                letters.add(new Letter(text, l.likelihood(), s.x0(), s.x1(), blank, l.options()));
                said.add(s);
                last = s;
            }
        }
        return smallCapitals(letters, said, baseline);
    }

    /** How far the letters lean, to the right if at all: strokes alone may be slashes, and an L has its foot on one side. */
    private static double lean(List<Sign> signs) {
        double[] slants = signs.stream()
                .filter(s -> !s.bar())
                .mapToDouble(Sign::slant)
                .sorted()
                .toArray();
        return slants.length < 2 ? 0 : Math.max(0, (slants[(slants.length - 1) / 2] + slants[slants.length / 2]) / 2);
    }

    /** A y that does not hang below the line is a Y: letters as tall as it in its word are capitals of a smaller size. */
    private static List<Letter> smallCapitals(List<Letter> letters, List<Sign> signs, double baseline) {
        List<Letter> out = new ArrayList<>(letters);
        for (int i = 0; i < letters.size(); i++) {
            Sign y = signs.get(i);
            boolean first = i == 0 || letters.get(i).afterBlank();
            if (!first || !letters.get(i).text().equals("y") || y.y1() > baseline + HANGS * y.height()) {
                continue;
            }
            for (int k = i; k < letters.size() && (k == i || !letters.get(k).afterBlank()); k++) {
                if (signs.get(k).height() > TALL * y.height()) {
                    out.set(k, letters.get(k).spelled(letters.get(k).text().toUpperCase(Locale.ROOT)));
                }
            }
        }
        return out;
    }

    /** Between letters of one word, where the row has more than two signs; else as wide as any. */
    private static double leastGap(List<Sign> signs, Cell cell, double cap) {
        double least = BLANK;
        for (int i = 1; i < signs.size() && signs.size() > 2; i++) {
            least = Math.min(
                    least,
                    Math.max(0, cell.gap(signs.get(i - 1).span(), signs.get(i).span(), cap)));
        }
        return least;
    }

    private static boolean blank(Sign before, Sign s, boolean seen, Cell cell, double cap, double least) {
        double gap = cell.gap(before.span(), s.span(), cap);
        if (cell.fixed()) {
            return gap > cell.blank();
        }
        boolean overlooked = gap > OVERLOOKED && gap > MUCH * least && !isSlim(before, cap) && !isSlim(s, cap);
        return gap > BLANK || overlooked || seen && gap > NO_BLANK && !isNarrowPair(before, s, cap);
    }

    /** Between two slim signs there is much white without a blank: 11 is set as wide as 00. */
    private static boolean isNarrowPair(Sign before, Sign s, double cap) {
        double pitch = (s.x0() + s.x1() - before.x0() - before.x1()) / 2;
        return isSlim(before, cap) && isSlim(s, cap) && pitch < PITCH * cap;
    }

    private static boolean isSlim(Sign s, double cap) {
        return s.x1() - s.x0() < SLIM * cap;
    }

    /** What a letter's own ink says better than its neighbours: a leaning bar is a slash, a tall c is a C. */
    private static String byShape(String text, Sign c, double lean, double cap, double baseline) {
        boolean tall = c.height() > TALL * cap;
        if (tall && c.bar() && c.slant() > lean + SLASH && "1Il|!i/".contains(text)) {
            return "/";
        }
        if (c.height() < 0.75 * cap && c.y1() < baseline - 0.25 * cap && "23".contains(text)) {
            return text.equals("2") ? "²" : "³";
        }
        return tall && "cosuvwxz".contains(text) ? text.toUpperCase(Locale.ROOT) : text;
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (Letter l : letters) {
            text.append(l.afterBlank() ? " " : "").append(l.text());
        }
        return text.toString();
    }

    /** How sure it is on average that letters stand here; 0 where nothing was read. */
    double likelihood() {
        return letters.stream().mapToDouble(Letter::sure).average().orElse(0);
    }

    /** Letters and figures among what was read. */
    long words() {
        return letters.stream()
                .filter(l -> l.text().chars().allMatch(Character::isLetterOrDigit))
                .count();
    }

    /** Without first and last words that were read so badly that they are line work beside the text. */
    ReadRow trimmed(ToDoubleFunction<String> least) {
        int from = 0;
        int to = letters.size();
        for (int end = wordEnd(from); end < to && badly(from, end, least); end = wordEnd(from)) {
            from = end;
        }
        for (int start = wordStart(to); start > from && badly(start, to, least); start = wordStart(to)) {
            to = start;
        }
        return to - from == letters.size() ? this : part(letters.subList(from, to));
    }

    private int wordEnd(int from) {
        int end = from + 1;
        while (end < letters.size() && !letters.get(end).afterBlank()) {
            end++;
        }
        return end;
    }

    private int wordStart(int to) {
        int start = to - 1;
        while (start > 0 && !letters.get(start).afterBlank()) {
            start--;
        }
        return start;
    }

    private boolean badly(int from, int to, ToDoubleFunction<String> least) {
        List<Letter> word = letters.subList(from, to);
        String text = word.stream().map(Letter::text).collect(Collectors.joining());
        return word.stream().mapToDouble(Letter::sure).average().orElse(0) < least.applyAsDouble(text);
    }

    private ReadRow part(List<Letter> kept) {
        double x0 = kept.get(0).x0();
        double x1 = kept.get(kept.size() - 1).x1();
        List<Blob> own = row.blobs().stream()
                .filter(b -> {
                    double x = upright.x(b.middleX(), b.middleY());
                    return x > x0 && x < x1;
                })
                .toList();
        return new ReadRow(new TextRow(own, row.along(), row.cell()), upright, turn, cap, baseline, List.copyOf(kept));
    }

    /** Without a mark before or behind what is a word of the drawing without it: the last dash of a line beside it. */
    ReadRow unmarked(Predicate<String> known) {
        int n = letters.size();
        if (n <= 2 || known.test(text())) {
            return this;
        }
        ReadRow behind = MARKS.contains(letters.get(0).text()) ? part(letters.subList(1, n)) : this;
        ReadRow before = MARKS.contains(letters.get(n - 1).text()) ? part(letters.subList(0, n - 1)) : this;
        return known.test(behind.text().strip())
                ? behind
                : known.test(before.text().strip()) ? before : this;
    }

    /** What of this row stands before and behind a part of it, where that is more than one sign. */
    List<TextRow> beside(ReadRow part) {
        List<Blob> before = new ArrayList<>();
        List<Blob> behind = new ArrayList<>();
        for (Blob b : row.blobs()) {
            if (!part.row.blobs().contains(b)) {
                boolean first = upright.x(b.middleX(), b.middleY())
                        < part.letters.get(0).x0();
                (first ? before : behind).add(b);
            }
        }
        return Stream.of(before, behind)
                .filter(blobs -> blobs.size() > 1)
                .map(blobs -> new TextRow(blobs, row.along(), row.cell()))
                .toList();
    }

    ReadRow with(List<Letter> changed) {
        return new ReadRow(row, upright, turn, cap, baseline, List.copyOf(changed));
    }
}
