package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.List;
import linewalk.importer.ocr.LetterReader;
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

    /** A letter alone that is read so well needs no second look. */
    private static final double SURE = 0.85;

    private static final double SLASH = 0.1;

    static ReadRow of(TextRow row, GrayU8 grey, Upright page, int turn, LetterReader reader) {
        Upright turned = page.turned(turn);
        RowImage image = RowImage.of(row, grey, turned);
        List<ReadLetter> read = row.blobs().size() == 1 ? alone(image, reader) : reader.line(image.crop());
        List<Cell> cells = Cell.of(row, turned);
        double cap = image.cap() / image.scale();
        List<Letter> letters = cells.size() == read.size()
                ? byCells(read, cells, cap, image.y(image.baseline()))
                : byReader(read, image, cap);
        return Spelling.corrected(new ReadRow(row, turned, turn, cap, image.y(image.baseline()), letters));
    }

    /** A letter alone is read badly. Set three times it is a word, of which the letter that two agree on is taken. */
    private static List<ReadLetter> alone(RowImage image, LetterReader reader) {
        List<ReadLetter> one = reader.line(image.crop());
        if (one.size() == 1 && one.get(0).likelihood() > SURE) {
            return one;
        }
        List<ReadLetter> three = reader.line(image.repeated(3));
        for (ReadLetter l : three) {
            double agree = three.stream()
                    .filter(o -> o.text().equalsIgnoreCase(l.text()))
                    .count();
            if (three.size() <= 4 && agree >= 2) {
                boolean unanimous = three.size() == 3 && agree == 3 && l.text().matches("[A-Z0-9]");
                double likelihood =
                        unanimous ? Math.sqrt(l.likelihood()) : l.likelihood() * Math.min(1, agree / 3 + 0.1);
                return List.of(new ReadLetter(
                        0, 0, image.crop().widthPx(), 0, false, List.of(new ReadLetter.Option(l.text(), likelihood))));
            }
        }
        return List.of();
    }

    /** The reader's own places are rough; where it saw as many letters as there are blobs, these tell. */
    private static List<Letter> byCells(List<ReadLetter> read, List<Cell> cells, double cap, double baseline) {
        List<Letter> letters = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            Cell c = cells.get(i);
            double gap = i == 0 ? 0 : c.x0() - cells.get(i - 1).x1();
            boolean blank = i > 0 && (gap > BLANK * cap || read.get(i).afterBlank() && gap > NO_BLANK * cap);
            String text = byShape(read.get(i).text(), c, cap, baseline);
            letters.add(new Letter(
                    text,
                    read.get(i).likelihood(),
                    c.x0(),
                    c.x1(),
                    blank,
                    read.get(i).options()));
        }
        return letters;
    }

    /** What a letter's own ink says better than its neighbours: a leaning bar is a slash, a tall c is a C. */
    private static String byShape(String text, Cell c, double cap, double baseline) {
        boolean tall = c.height() > 0.88 * cap;
        if (tall && c.bar() && c.slant() > SLASH && "1Il|!i/".contains(text)) {
            return "/";
        }
        if (c.height() < 0.75 * cap && c.y1() < baseline - 0.25 * cap && "23".contains(text)) {
            return text.equals("2") ? "²" : "³";
        }
        return tall && "cosuvwxz".contains(text) ? text.toUpperCase(java.util.Locale.ROOT) : text;
    }

    private static List<Letter> byReader(List<ReadLetter> read, RowImage image, double cap) {
        List<Letter> letters = new ArrayList<>();
        for (ReadLetter l : read) {
            Cell c = new Cell(image.x(l.x0Px()), image.y(l.y0Px()), image.x(l.x1Px()), image.y(l.y1Px()), 0, false);
            String text = byShape(l.text(), c, cap, image.y(image.baseline()));
            letters.add(new Letter(text, l.likelihood(), c.x0(), c.x1(), l.afterBlank(), l.options()));
        }
        return letters;
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (Letter l : letters) {
            text.append(l.afterBlank() ? " " : "").append(l.text());
        }
        return text.toString();
    }

    /** Mean likelihood of its letters; 0 where nothing was read. */
    double likelihood() {
        return letters.stream().mapToDouble(Letter::likelihood).average().orElse(0);
    }

    /** Letters and figures among what was read. */
    long words() {
        return letters.stream()
                .filter(l -> l.text().chars().allMatch(Character::isLetterOrDigit))
                .count();
    }

    ReadRow with(List<Letter> changed) {
        return new ReadRow(row, upright, turn, cap, baseline, List.copyOf(changed));
    }
}
